package boreledger.station.app;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.plan.Position;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How the entries of a session stand. The end of a session is enough to tell it of that end: what
 * corrects a reading always comes after it, and so does a later reading at its position.
 */
public final class SessionStory {
  private final Map<Long, Position> places = new HashMap<>();
  private final Map<Long, TakenBack> takenBack = new HashMap<>();
  private final Map<Position, Long> last = new HashMap<>();

  private SessionStory() {}

  /** The lines of a session's last entries, which are given oldest first. */
  public static List<EntryLine> of(List<Entry> entries) {
    SessionStory story = new SessionStory();
    entries.forEach(entry -> story.hear(entry.seq(), entry.body()));
    entries.forEach(entry -> story.settle(entry.seq()));
    return entries.stream().map(story::line).toList();
  }

  private void hear(long seq, EntryBody body) {
    if (body instanceof ReadingTaken reading) {
      places.put(seq, reading.position());
    } else if (body instanceof TakenBack back && places.containsKey(back.entry())) {
      takenBack.put(back.entry(), back);
    } else if (body instanceof Restored again) {
      takenBack.remove(again.entry());
    } else if (body instanceof Moved moved && places.containsKey(moved.entry())) {
      places.put(moved.entry(), moved.position());
    }
  }

  private void settle(long seq) {
    if (places.containsKey(seq) && !takenBack.containsKey(seq)) {
      last.put(places.get(seq), seq);
    }
  }

  private EntryLine line(Entry entry) {
    Position place = places.get(entry.seq());
    return new EntryLine(entry, place, standing(entry.seq(), place), takenBack.get(entry.seq()));
  }

  private Standing standing(long seq, Position place) {
    if (place == null) {
      return Standing.NO_READING;
    } else if (takenBack.containsKey(seq)) {
      return Standing.TAKEN_BACK;
    }
    return last.get(place) == seq ? Standing.IN_FORCE : Standing.READ_AGAIN;
  }
}
