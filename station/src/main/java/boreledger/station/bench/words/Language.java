package boreledger.station.bench.words;

import boreledger.station.wording.Vocabulary;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;

/** A language that the window speaks; each has its bundle, with every key of {@link Text}. */
public enum Language {
  /** English, in {@code bench.properties}. */
  ENGLISH("English", Locale.ROOT),
  /** German, in {@code bench_de.properties}. */
  GERMAN("Deutsch", Locale.GERMAN);

  private static final AtomicReference<Language> SPOKEN = new AtomicReference<>(ENGLISH);

  private final String title;
  private final Locale locale;
  private final ResourceBundle words;
  private final Vocabulary vocabulary;

  Language(String title, Locale locale) {
    this.title = title;
    this.locale = locale;
    this.vocabulary = Vocabulary.of(locale);
    this.words = ResourceBundle.getBundle("boreledger.station.bench.bench", locale);
  }

  /** Speaks a language from now on; words that were asked for before stay as they are. */
  public static void speak(Language chosen) {
    SPOKEN.set(chosen);
  }

  /** The language that is spoken; English until another is chosen. */
  public static Language spoken() {
    return SPOKEN.get();
  }

  /** The language of a locale, whatever its country; English when there is no bundle for it. */
  public static Language of(Locale locale) {
    return Stream.of(values())
        .filter(each -> each.locale.getLanguage().equals(locale.getLanguage()))
        .findFirst()
        .orElse(ENGLISH);
  }

  /** What its speakers call it. */
  public String title() {
    return title;
  }

  /** The one after it; the first comes after the last. */
  public Language next() {
    return values()[(ordinal() + 1) % values().length];
  }

  Vocabulary vocabulary() {
    return vocabulary;
  }

  /** The words of a key, with their places to fill in. */
  String words(String key) {
    return words.getString(key);
  }
}
