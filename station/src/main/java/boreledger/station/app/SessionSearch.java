package boreledger.station.app;

import boreledger.station.ledger.EntryBody.SessionOpened;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Finds sessions by words: each must stand in the job, the measure, the ring, the date or the
 * gauge, in capitals or not. No words find every session.
 *
 * @param words in small letters
 * @param zone whose date is meant, such as 2031-05-06
 */
public record SessionSearch(List<String> words, ZoneId zone) implements Predicate<SessionLine> {
  /** Takes a copy of the list. */
  public SessionSearch {
    words = List.copyOf(words);
  }

  /** A search as a person types it, words parted by blanks. */
  public static SessionSearch of(String typed, ZoneId zone) {
    Stream<String> words = Stream.of(typed.toLowerCase(Locale.ROOT).split("\\s+"));
    return new SessionSearch(words.filter(word -> !word.isEmpty()).toList(), zone);
  }

  @Override
  public boolean test(SessionLine session) {
    SessionOpened opened = session.opened();
    String searched =
        Stream.of(
                opened.jobName(),
                opened.measure().word(),
                opened.ring() == null ? "" : opened.ring(),
                LocalDate.ofInstant(opened.wall(), zone).toString(),
                session.gauge())
            .reduce("", (all, next) -> all + "\n" + next)
            .toLowerCase(Locale.ROOT);
    return words.stream().allMatch(searched::contains);
  }
}
