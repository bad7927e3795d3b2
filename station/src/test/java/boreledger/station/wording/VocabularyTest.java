package boreledger.station.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VocabularyTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d\\}");

  private final Vocabulary german = Vocabulary.of(Locale.GERMAN);

  @ParameterizedTest
  @ValueSource(strings = {"", "_de"})
  void aLanguageHasEveryPhraseAndNoOther(String language) throws IOException {
    Set<String> phrases = keys(Stream.of(Phrase.values()).map(Phrase::key));

    assertEquals(
        String.join("\n", phrases),
        String.join("\n", new TreeSet<>(bundle("sentences" + language).stringPropertyNames())));
    assertTrue(phrases.size() > 60, "phrases " + phrases.size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "_de"})
  void aLanguageHasEveryRecordedSentenceAndNoOther(String language) throws IOException {
    Set<String> sentences = keys(Stream.of(RecordedSentence.values()).map(RecordedSentence::key));

    assertEquals(
        String.join("\n", sentences),
        String.join("\n", new TreeSet<>(bundle("recorded" + language).stringPropertyNames())));
    assertTrue(sentences.size() > 90, "sentences " + sentences.size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"sentences", "recorded"})
  void everyLanguageFillsInTheSamePlaces(String kind) throws IOException {
    Properties english = bundle(kind);
    Properties translated = bundle(kind + "_de");
    for (String key : english.stringPropertyNames()) {
      assertEquals(
          places(english.getProperty(key)), places(translated.getProperty(key)), () -> key);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sentences", "recorded"})
  void anApostropheStandsTwice(String file) throws IOException {
    for (String bundle : new String[] {file, file + "_de"}) {
      Properties words = bundle(bundle);
      for (String key : words.stringPropertyNames()) {
        assertFalse(words.getProperty(key).replace("''", "").contains("'"), bundle + ": " + key);
      }
    }
  }

  @Test
  void everyRecordedSentenceIsToldFromItsEnglishWordsAndFilledInAnew() throws IOException {
    Properties english = bundle("recorded");
    for (RecordedSentence sentence : RecordedSentence.values()) {
      String text = filled(english.getProperty(sentence.key()));

      RecordedSentence.Known known = RecordedSentence.recognised(text).orElseThrow();
      String told = german.recorded(text);

      assertEquals(sentence, known.sentence(), text);
      assertNotEquals(text, told);
      for (String part : known.parts()) {
        assertTrue(told.contains(part), () -> part + " in " + told);
      }
      assertEquals(text, Vocabulary.ENGLISH.recorded(text));
    }
  }

  @Test
  void aSentenceInsideASentenceIsToldToo() {
    assertEquals(
        "am Messplatz bestätigt, obwohl: Bohrung 95.4020 mm liegt nicht zwischen 95.5000 und"
            + " 98.0000 mm; Messgerät, Einheit und Einstellung prüfen",
        german.recorded(
            "confirmed at the bench although bore 95.4020 mm is outside 95.5000 to 98.0000 mm;"
                + " check the gauge, its unit and its setting"));
  }

  @Test
  void whatSomebodyWroteStaysAsItIs() {
    assertEquals("swarf under the anvil", german.recorded("swarf under the anvil"));
    assertEquals("", german.recorded(""));
  }

  private static Set<String> keys(Stream<String> keys) {
    return keys.collect(Collectors.toCollection(TreeSet::new));
  }

  private static String filled(String words) {
    return PLACE.matcher(words.replace("''", "'")).replaceAll(place -> "7." + place.start());
  }

  private static Set<String> places(String words) {
    return PLACE.matcher(words).results().map(MatchResult::group).collect(Collectors.toSet());
  }

  private static Properties bundle(String name) throws IOException {
    Properties bundle = new Properties();
    String file = "/boreledger/station/wording/" + name + ".properties";
    try (InputStream in = VocabularyTest.class.getResourceAsStream(file);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      bundle.load(reader);
    }
    return bundle;
  }
}
