package boreledger.station.bench.voice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.words.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Real processes: a script in the place of the speech program tells what it was given. */
@DisabledOnOs(OS.WINDOWS)
class SystemVoiceTest {
  private static final int PATIENCE_S = 20;

  @TempDir Path folder;
  private final BlockingQueue<String> faults = new LinkedBlockingQueue<>();

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  @Test
  void aSentenceIsOneArgumentWhateverStandsInIt() throws Exception {
    program("spd-say", "printf '<%s>' \"$@\" > " + out("part") + "; mv " + out("part", "said"));
    try (SystemVoice voice = voice()) {
      voice.say("Cylinder 2, $(id) `id` \"x\"; 60 millimetres");

      assertEquals(
          "<--wait><--language><en><--><Cylinder 2, $(id) `id` \"x\"; 60 millimetres>",
          read("said"));
    }
  }

  @Test
  void theLanguageIsTheWindowsAndInputIsUtf8() throws Exception {
    Language.speak(Language.GERMAN);
    program(
        "espeak-ng",
        "{ printf '%s ' \"$@\"; cat; } > " + out("part") + "; mv " + out("part", "said"));
    try (SystemVoice voice = voice()) {
      voice.say("Trotzdem nehmen? \u00d6l");

      assertEquals("-v de --stdin Trotzdem nehmen? \u00d6l", read("said"));
    }
  }

  @Test
  void whileOneSentenceIsSaidOnlyTheLatestWaits() throws Exception {
    Path go = folder.resolve("go");
    program(
        "spd-say",
        "echo \"$5\" >> " + out("said") + "; while [ ! -e " + go + " ]; do sleep 0.02; done");
    try (SystemVoice voice = voice()) {
      voice.say("first");
      until(() -> Files.exists(folder.resolve("said")));
      assertTimeoutPreemptively(
          Duration.ofSeconds(2),
          () -> {
            for (int i = 0; i < 200; i++) {
              voice.say("number " + i);
            }
          });
      Files.createFile(go);
      until(() -> Files.readAllLines(folder.resolve("said")).size() == 2);

      assertEquals(List.of("first", "number 199"), Files.readAllLines(folder.resolve("said")));
    }
  }

  @Test
  void aProgramThatFailsIsToldOnce() throws Exception {
    Path program = program("spd-say", "echo x >> " + out("said") + "; exit 3");
    try (SystemVoice voice = voice()) {
      voice.say("one");
      assertEquals(
          "Nothing could be said: " + program + " ended with status 3",
          faults.poll(PATIENCE_S, TimeUnit.SECONDS));
      voice.say("two");
      until(() -> Files.readAllLines(folder.resolve("said")).size() == 2);
    }
    assertTrue(faults.isEmpty(), faults::toString);
  }

  @Test
  void aProgramThatCannotStartIsTold() throws Exception {
    Path program = program("spd-say", "");
    Files.writeString(program, "#!/no/such/shell\n");
    try (SystemVoice voice = voice()) {
      voice.say("one");

      String told = faults.poll(PATIENCE_S, TimeUnit.SECONDS);
      assertTrue(
          told != null && told.startsWith("Nothing could be said: " + program + " did not start"),
          told);
    }
  }

  @Test
  void withoutAnyProgramItSaysWhatToInstall() throws Exception {
    try (SystemVoice voice = voice()) {
      voice.say("one");

      assertEquals(
          "No program that speaks was found; install spd-say or espeak-ng, or switch the voice"
              + " off",
          faults.poll(PATIENCE_S, TimeUnit.SECONDS));
    }
  }

  private SystemVoice voice() {
    return new SystemVoice("Linux", List.of(folder), faults::add);
  }

  private Path program(String name, String script) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, "#!/bin/sh\n" + script + "\n");
    assertTrue(file.toFile().setExecutable(true));
    return file;
  }

  private String out(String... names) {
    return String.join(
        " ", List.of(names).stream().map(each -> "" + folder.resolve(each)).toList());
  }

  private String read(String name) throws Exception {
    until(() -> Files.exists(folder.resolve(name)));
    return Files.readString(folder.resolve(name));
  }

  private static void until(Callable<Boolean> happened) throws Exception {
    WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, happened);
  }
}
