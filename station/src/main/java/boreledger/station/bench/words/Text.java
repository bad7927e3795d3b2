package boreledger.station.bench.words;

import java.text.MessageFormat;
import java.util.Locale;

/**
 * A sentence or word of the window. The words themselves stand in one bundle for each {@link
 * Language}, under the {@link #key}; each room has an enumeration of its own. Any thread may ask
 * for them.
 */
public sealed interface Text
    permits BenchText,
        BoresText,
        GapsText,
        JobFormText,
        LedgerText,
        LessonText,
        StartText,
        WindowText {
  /** The constant's name. */
  String name();

  /** What its keys begin with, such as {@code ledger.}; empty for the bench and the window. */
  default String room() {
    return "";
  }

  /** Its key in the bundle, such as {@code place.cylinder}. */
  default String key() {
    return room() + name().toLowerCase(Locale.ROOT).replace('_', '.');
  }

  /** The words with {@code {0}}, {@code {1}} and so on filled in; numbers come in as text. */
  default String with(String... parts) {
    return new MessageFormat(Language.spoken().words(key()), Locale.ROOT).format(parts);
  }
}
