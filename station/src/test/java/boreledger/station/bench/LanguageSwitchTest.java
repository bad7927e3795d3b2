package boreledger.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.words.Language;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Texts;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Key G in the real window: the language changes at the next start, in every room. */
class LanguageSwitchTest {
  private static final int LEAST_LETTERS = 4;

  @TempDir Path folder;

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  @Test
  void keyGSaysSoAtOnceAndTheNextStartSpeaksGermanInEveryRoom() throws Exception {
    List<String> english = start("G");
    assertTrue(english.contains("room 1 says What shall be gauged?"), english::toString);
    assertTrue(english.contains("room 1 says Deutsch\\nat restart"), english::toString);

    List<String> german = start();

    assertTrue(german.size() > 150, "words seen: " + german.size());
    for (int room = 1; room <= 5; room++) {
      String prefix = "room " + room + " says ";
      assertTrue(german.stream().anyMatch(line -> line.startsWith(prefix)), prefix);
    }
    assertTrue(german.contains("room 1 says Was wird gemessen?"), german::toString);
    assertTrue(german.contains("room 5 says Das Messbuch"), german::toString);
    assertTrue(german.contains("room 1 says Deutsch\\nTaste G"), german::toString);
    Map<String, Pattern> englishOnly = englishOnly();
    assertTrue(englishOnly.size() > 300, "English sentences: " + englishOnly.size());
    Set<String> keys = Texts.all().map(Text::key).collect(Collectors.toSet());
    List<String> wrong = new ArrayList<>();
    for (String line : german) {
      String words = line.replaceFirst("room \\d says ", "").replace("\\n", "\n");
      assertFalse(keys.contains(words), "a key in place of its words: " + line);
      englishOnly.forEach(
          (key, sentence) -> {
            if (sentence.matcher(words).matches()) {
              wrong.add(key + ": " + line);
            }
          });
    }
    assertEquals("", String.join("\n", wrong));
  }

  /** What stands in English and says something else in German, with anything in its places. */
  private static Map<String, Pattern> englishOnly() {
    Map<String, Pattern> sentences = new LinkedHashMap<>();
    String place = "\u0001";
    for (Text text : Texts.all().toList()) {
      String english = filled(Language.ENGLISH, text, place);
      String german = filled(Language.GERMAN, text, place);
      String letters = english.replace(place, "").replaceAll("\\P{L}", "");
      if (letters.length() >= LEAST_LETTERS && !english.equals(german)) {
        String sentence =
            Pattern.compile(place)
                .splitAsStream(english + "\u0002")
                .map(part -> Pattern.quote(part.replace("\u0002", "")))
                .collect(Collectors.joining(".+"));
        sentences.put(text.key(), Pattern.compile(sentence, Pattern.DOTALL));
      }
    }
    return sentences;
  }

  private static String filled(Language language, Text text, String place) {
    Language.speak(language);
    return text.with(place, place, place, place, place, place);
  }

  private List<String> start(String... keys) throws Exception {
    Path output = folder.resolve("output.txt");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // The screen is the same headless one as in this machine.
    for (String name : List.of("glass.platform", "monocle.platform", "prism.order")) {
      command.add("-D" + name + "=" + System.getProperty(name));
    }
    command.add("-Duser.language=en");
    command.add("-Dstdout.encoding=UTF-8");
    command.add("-Dfile.encoding=UTF-8");
    command.add("-Duser.home=" + folder);
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(LanguageDriver.class.getName());
    command.add(folder.toString());
    command.addAll(List.of(keys));
    ProcessBuilder program =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile());
    program.environment().put("XDG_CONFIG_HOME", folder.resolve("settings").toString());
    Process process = program.start();
    boolean ended = process.waitFor(120, TimeUnit.SECONDS);
    process.destroyForcibly();
    List<String> lines = Files.readAllLines(output, StandardCharsets.UTF_8);
    assertTrue(ended, "still running: " + lines);
    assertEquals(0, process.exitValue(), lines::toString);
    return lines.stream().filter(line -> line.startsWith("room ")).toList();
  }
}
