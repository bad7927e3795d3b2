package boreledger.station.session;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * The reason of a correction, with its person and its time.
 *
 * @param why in one plain clause
 * @param who the person; null when not known
 * @param wall when it was said
 */
public record Said(String why, String who, Instant wall) {
  /** In words, such as {@code mixed up (A. Turner, 2031-05-06T12:00:00Z)}. */
  public String words() {
    String when = wall.truncatedTo(ChronoUnit.SECONDS).toString();
    return why + " (" + (who == null ? "" : who + ", ") + when + ")";
  }
}
