package boreledger.station.results;

import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.StoredReading;
import boreledger.station.session.StoredSession.TakenBackReading;
import boreledger.station.wording.Part.Difference;
import boreledger.station.wording.Part.Name;
import boreledger.station.wording.Part.Place;
import boreledger.station.wording.Part.Recorded;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import java.util.ArrayList;
import java.util.List;

/** What a person should know of what was said of a session afterwards, and of its odd readings. */
final class ReadingCautions {
  private ReadingCautions() {}

  static List<Statement> of(StoredSession session) {
    List<Statement> cautions = new ArrayList<>();
    session.takenBack().forEach(struck -> cautions.add(takenBack(struck)));
    session.amendments().forEach(each -> cautions.add(AmendmentText.of(session.id(), each)));
    for (StoredReading reading : session.inForce()) {
      for (String caution : reading.reading().cautions()) {
        cautions.add(
            Phrase.READING_CAUTIONED.of(new Place(reading.position()), new Recorded(caution)));
      }
    }
    return cautions;
  }

  private static Statement takenBack(TakenBackReading struck) {
    Place place = new Place(struck.reading().position());
    Difference value = new Difference(struck.reading().reading().valueMm());
    Name entry = Name.of(struck.reading().seq());
    // Without a name nobody typed the reason: the gesture at the gauge has its own words.
    return struck.by().who() == null
        ? Phrase.READING_TAKEN_BACK.of(place, value, entry, new Recorded(struck.by().why()))
        : Phrase.READING_TAKEN_BACK_BY.of(
            place, value, entry, new Name(struck.by().why()), new Name(struck.by().who()));
  }
}
