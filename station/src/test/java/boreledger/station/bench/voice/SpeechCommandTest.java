package boreledger.station.bench.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.words.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpeechCommandTest {
  @TempDir Path first;
  @TempDir Path second;

  @Test
  void withoutAnyProgramThereIsNone() {
    assertEquals(Optional.empty(), find("Linux", Language.ENGLISH));
    assertEquals(Optional.empty(), find("Mac OS X", Language.ENGLISH));
    assertEquals(Optional.empty(), find("Windows 11", Language.ENGLISH));
  }

  @Test
  void onLinuxTheSpeechServiceIsPreferredWhereverItStands() throws IOException {
    program(first, "espeak");
    program(first, "espeak-ng");
    Path service = program(second, "spd-say");

    SpeechCommand found = find("Linux", Language.GERMAN).orElseThrow();

    assertEquals(
        List.of(service.toString(), "--wait", "--language", "de", "--", "-v Zylinder 2; rm x"),
        found.toSay("-v Zylinder 2; rm x"));
  }

  @Test
  void onLinuxTheNewerSynthesizerComesBeforeTheOlderAndReadsItsInput() throws IOException {
    program(first, "espeak");
    Path newer = program(second, "espeak-ng");

    SpeechCommand found = find("Linux", Language.ENGLISH).orElseThrow();

    assertTrue(found.input());
    assertEquals(List.of(newer.toString(), "-v", "en", "--stdin"), found.toSay("Cylinder 2"));
  }

  @Test
  void aFileThatCannotBeRunIsNoProgram() throws IOException {
    Files.createFile(first.resolve("spd-say"));
    Path older = program(second, "espeak");

    SpeechCommand found = find("Linux", Language.ENGLISH).orElseThrow();

    assertEquals(older.toString(), found.arguments().get(0));
  }

  @Test
  void onMacOsSayReadsItsInputWithAVoiceOfTheLanguage() throws IOException {
    Path say = program(first, "say");

    assertEquals(
        List.of(say.toString(), "-v", "Anna", "-f", "-"),
        find("Mac OS X", Language.GERMAN).orElseThrow().toSay("Zylinder 2"));
  }

  @Test
  void onWindowsASentenceIsNeverPartOfTheScript() throws IOException {
    program(first, "powershell.exe");

    SpeechCommand found = find("Windows 11", Language.GERMAN).orElseThrow();

    assertTrue(found.input());
    assertEquals(found.toSay("one"), found.toSay("$(two)"));
    assertTrue(found.arguments().get(4).contains("'de-DE'"));
  }

  private Optional<SpeechCommand> find(String system, Language language) {
    return SpeechCommand.find(system, List.of(first, second), language);
  }

  private static Path program(Path folder, String name) throws IOException {
    Path file = Files.createFile(folder.resolve(name));
    assertTrue(file.toFile().setExecutable(true));
    return file;
  }
}
