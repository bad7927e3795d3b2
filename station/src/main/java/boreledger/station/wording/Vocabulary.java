package boreledger.station.wording;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** One language's words for every {@link Phrase} and every {@link RecordedSentence}. */
public final class Vocabulary {
  /** English, which is also what the ledger, the command line and the build sheet speak. */
  public static final Vocabulary ENGLISH = new Vocabulary(Locale.ROOT);

  private static final String SENTENCES = "boreledger.station.wording.sentences";
  private static final String RECORDED = "boreledger.station.wording.recorded";

  private final ResourceBundle sentences;
  private final ResourceBundle recorded;
  private final boolean english;

  private Vocabulary(Locale locale) {
    this.sentences = ResourceBundle.getBundle(SENTENCES, locale);
    this.recorded = ResourceBundle.getBundle(RECORDED, locale);
    this.english = locale.equals(Locale.ROOT);
  }

  /**
   * The words of a language.
   *
   * @param locale {@link Locale#ROOT} for English, or one that has its bundles
   */
  public static Vocabulary of(Locale locale) {
    return locale.equals(Locale.ROOT) ? ENGLISH : new Vocabulary(locale);
  }

  /** A phrase filled in with words and written numbers. */
  public String say(Phrase phrase, String... parts) {
    return new MessageFormat(sentences.getString(phrase.key()), Locale.ROOT).format(parts);
  }

  /** A sentence that came as English text; one that is not known stays as it is. */
  public String recorded(String text) {
    if (english) {
      return text;
    }
    return RecordedSentence.recognised(text)
        .map(
            known ->
                new MessageFormat(recorded.getString(known.sentence().key()), Locale.ROOT)
                    .format(known.parts().stream().map(this::recorded).toArray()))
        .orElse(text);
  }
}
