package boreledger.station.bench.memory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.words.Language;
import boreledger.station.job.DisplayUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MemoryTest {
  @TempDir Path folder;

  @Test
  void whatWasSavedIsThereOnTheNextStart() throws IOException {
    Memory memory = new Memory(file());
    memory.put("light", "BRIGHT");
    memory.put("gone", "x");
    memory.put("gone", null);
    memory.save();

    Memory next = new Memory(file());
    assertEquals(Optional.of("BRIGHT"), next.get("light"));
    assertEquals(Optional.empty(), next.get("gone"));
  }

  @Test
  void theFileUsedLastComesFirstAndOnlyOnce() {
    Memory memory = new Memory(null);
    for (int i = 0; i < Memory.RECENT + 3; i++) {
      memory.used("job", folder.resolve(i + ".job.toml"));
    }
    memory.used("job", folder.resolve("7.job.toml"));

    List<Path> recent = memory.recent("job");
    assertEquals(Memory.RECENT, recent.size());
    assertEquals(folder.resolve("7.job.toml"), recent.get(0));
    assertEquals(1, recent.stream().filter(folder.resolve("7.job.toml")::equals).count());
  }

  @Test
  void aDamagedFileIsAFirstDay() throws IOException {
    Files.createDirectories(file().getParent());
    Files.write(file(), new byte[] {(byte) 0xff, 'l', '=', '\\', 'u', 'x'});

    assertEquals(Optional.empty(), new Memory(file()).get("light"));
  }

  @Test
  void theLookComesBackAndWordsThatNobodyKnowsAreLeftOut() {
    Memory memory = new Memory(null);
    memory.put("light", "SUN");
    memory.put("unit", "furlong");
    Appearance appearance = new Appearance();

    new RememberedLook(memory).restore(appearance, Locale.ROOT);

    assertEquals(Light.SUN, appearance.light().get());
    assertNull(appearance.unit().get());
    memory.put("unit", "IN");
    new RememberedLook(memory).restore(appearance, Locale.ROOT);
    assertEquals(DisplayUnit.IN, appearance.unit().get());
  }

  @Test
  void theSystemsLanguageIsSpokenUntilOneIsChosen() {
    assertEquals(Language.GERMAN, restored(new Memory(null), "de-AT").language().get());
    assertEquals(Language.ENGLISH, restored(new Memory(null), "fr-FR").language().get());
    assertEquals(Language.ENGLISH, restored(new Memory(null), "en-GB").language().get());
  }

  @Test
  void aChosenLanguageIsRememberedAndTheSystemsIsNot() {
    Memory memory = new Memory(null);
    Appearance appearance = restored(memory, "de-DE");
    assertEquals(Optional.empty(), memory.get("language"));

    appearance.language().set(Language.ENGLISH);

    assertEquals(Optional.of("ENGLISH"), memory.get("language"));
    assertEquals(Language.ENGLISH, restored(memory, "de-DE").language().get());
  }

  @Test
  void aSwitchIsOffUntilItWasSwitchedOnOnce() {
    Memory memory = new Memory(null);
    BooleanProperty first = new SimpleBooleanProperty(false);
    new RememberedLook(memory).rememberUnder("voice", first);
    assertFalse(first.get());
    assertEquals(Optional.empty(), memory.get("voice"));

    first.set(true);

    BooleanProperty next = new SimpleBooleanProperty(false);
    new RememberedLook(memory).rememberUnder("voice", next);
    assertTrue(next.get());
  }

  private static Appearance restored(Memory memory, String system) {
    Appearance appearance = new Appearance();
    new RememberedLook(memory).restore(appearance, Locale.forLanguageTag(system));
    return appearance;
  }

  @Test
  void readingMakesNoFile() {
    new Memory(file());

    assertTrue(Files.notExists(file()));
  }

  private Path file() {
    return folder.resolve("settings").resolve("window.properties");
  }
}
