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
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TextTest {
  private static final Path SOURCES = Path.of("src/main/java/boreledger/station/bench");

  @Test
  void theBundleHasEveryTextAndNoOther() throws IOException {
    Set<String> wanted =
        Arrays.stream(Text.values()).map(Text::key).collect(Collectors.toCollection(TreeSet::new));

    assertEquals(String.join("\n", wanted), String.join("\n", new TreeSet<>(keys())));
    assertTrue(wanted.size() > 80, "texts " + wanted.size());
  }

  @Test
  void everyTextIsUsed() throws IOException {
    String sources = sources();
    List<String> unused =
        Arrays.stream(Text.values())
            .map(Text::name)
            .filter(name -> !Pattern.compile("Text\\." + name + "\\b").matcher(sources).find())
            .toList();

    assertEquals(List.of(), unused);
  }

  @Test
  void everyTextCanBeFilledIn() {
    for (Text text : Text.values()) {
      String filled = text.with("a", "b", "c", "d");
      assertFalse(filled.isBlank(), text.key());
      assertFalse(filled.contains("{"), text.key() + ": " + filled);
      assertFalse(filled.contains("''"), text.key() + ": " + filled);
    }
  }

  private static Set<String> keys() throws IOException {
    Properties bundle = new Properties();
    try (InputStream in =
            TextTest.class.getResourceAsStream("/boreledger/station/bench/bench.properties");
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      bundle.load(reader);
    }
    return bundle.stringPropertyNames();
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
