package boreledger.station.bench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class TextTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d\\}");
  private static final Path SOURCES = Path.of("src/main/java/boreledger/station/bench");

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  @ParameterizedTest
  @MethodSource("bundles")
  void aBundleHasEveryTextAndNoOther(String bundle) throws IOException {
    Set<String> wanted = Texts.all().map(Text::key).collect(Collectors.toCollection(TreeSet::new));

    assertEquals(
        String.join("\n", wanted),
        String.join("\n", new TreeSet<>(words(bundle).stringPropertyNames())));
    assertTrue(wanted.size() > 80, "texts " + wanted.size());
  }

  @Test
  void everyTextIsUsed() throws IOException {
    String sources = sources();
    List<String> unused =
        Texts.all()
            .map(text -> text.getClass().getSimpleName() + "." + text.name())
            .filter(name -> !Pattern.compile("\\b" + name + "\\b").matcher(sources).find())
            .toList();

    assertEquals(List.of(), unused);
  }

  @Test
  void everyLanguageHasItsBundle() {
    assertEquals(Language.values().length, bundles().count());
  }

  @ParameterizedTest
  @MethodSource("bundles")
  void everyTextFillsInTheSameInEveryLanguage(String bundle) throws IOException {
    Properties english = words("bench.properties");
    Properties words = words(bundle);
    for (String key : english.stringPropertyNames()) {
      assertEquals(places(english.getProperty(key)), places(words.getProperty(key)), key);
    }
  }

  @Test
  void wordsAreSpokenInTheLanguageChosen() {
    assertEquals("Cylinder 2", BenchText.PLACE_CYLINDER.with("2"));

    Language.speak(Language.GERMAN);

    assertEquals("Zylinder 2", BenchText.PLACE_CYLINDER.with("2"));
    assertEquals("Stoßspiel", BenchText.LIVE_GAP.with());
  }

  @ParameterizedTest
  @EnumSource
  void everyTextCanBeFilledIn(Language language) {
    Language.speak(language);
    for (Text text : Texts.all().toList()) {
      String filled = text.with("a", "b", "c", "d");
      assertFalse(filled.isBlank(), text.key());
      assertFalse(filled.contains("{"), text.key() + ": " + filled);
      assertFalse(filled.contains("''"), text.key() + ": " + filled);
    }
  }

  static Stream<String> bundles() {
    return Stream.of("bench.properties", "bench_de.properties");
  }

  private static Set<String> places(String words) {
    return PLACE.matcher(words).results().map(MatchResult::group).collect(Collectors.toSet());
  }

  private static Properties words(String file) throws IOException {
    Properties bundle = new Properties();
    try (InputStream in = TextTest.class.getResourceAsStream("/boreledger/station/bench/" + file);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      bundle.load(reader);
    }
    return bundle;
  }

  private static String sources() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<Path> all = files.filter(file -> file.toString().endsWith(".java")).toList();
      assertTrue(all.size() > 30, "files " + all.size());
      StringBuilder text = new StringBuilder();
      for (Path file : all) {
        text.append(Files.readString(file));
      }
      return text.toString();
    }
  }
}
