package boreledger.station.bench.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.model.Command;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeyChoicesTest {
  private final Memory memory = new Memory(null);
  private final KeyChoices keys = new KeyChoices(memory);

  @Test
  void everyCommandHasAKeyOfItsOwnOnTheFirstDay() {
    Set<KeyCode> seen = new HashSet<>();
    for (Command command : Command.values()) {
      KeyCode key = keys.key(command).getValue();
      assertTrue(seen.add(key), command.id());
      assertEquals(Optional.of(command), keys.command(key));
      assertEquals(Optional.empty(), new KeyChoices(new Memory(null)).choose(command, key));
    }
    assertEquals(5, seen.size());
  }

  @Test
  void aChosenKeyIsThereOnTheNextStartAndTheOldOneIsFree() {
    assertEquals(Optional.empty(), keys.choose(Command.SKIP, KeyCode.F9));

    assertEquals(Optional.of(Command.SKIP), keys.command(KeyCode.F9));
    assertEquals(Optional.empty(), keys.command(KeyCode.S));
    assertEquals(KeyCode.F9, new KeyChoices(memory).key(Command.SKIP).getValue());
  }

  @Test
  void aKeyOfAnotherCommandIsRefusedByName() {
    assertEquals(
        Optional.of("Key T does this already: Take it. Press another one"),
        keys.choose(Command.SKIP, KeyCode.T));
    assertEquals(KeyCode.S, keys.key(Command.SKIP).getValue());
    assertEquals(Optional.empty(), memory.get("key.skip"));
  }

  @ParameterizedTest
  @EnumSource(names = {"M", "B", "U", "G", "V", "F11", "TAB", "SPACE", "ENTER", "LEFT", "UP"})
  void aKeyThatTheWindowUsesIsRefused(KeyCode key) {
    assertEquals(
        Optional.of("Key " + key.getName() + " is used by the window itself. Press another one"),
        keys.choose(Command.READ, key));
  }

  @ParameterizedTest
  @EnumSource(names = {"DIGIT3", "NUMPAD7", "MINUS", "PERIOD", "COMMA", "DECIMAL"})
  void aKeyThatAGaugeTypesIsRefused(KeyCode key) {
    assertEquals(
        Optional.of(
            "Key " + key.getName() + " may come from a gauge that types. Press another one"),
        keys.choose(Command.READ, key));
  }

  @Test
  void aModifierAloneAndAKeyWithoutANameAreRefused() {
    assertEquals(
        Optional.of("Press one key alone, without Ctrl, Alt or Shift"),
        keys.choose(Command.READ, KeyCode.SHIFT));
    assertEquals(
        Optional.of("This key has no name here. Press another one"),
        keys.choose(Command.READ, KeyCode.UNDEFINED));
  }

  @Test
  void whatCannotBeAKeyIsNotRemembered() {
    memory.put("key.skip", "M");
    memory.put("key.read", "no such key");

    KeyChoices next = new KeyChoices(memory);

    assertEquals(KeyCode.S, next.key(Command.SKIP).getValue());
    assertEquals(KeyCode.R, next.key(Command.READ).getValue());
  }
}
