package boreledger.station.bench.keys;

import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.model.Command;
import boreledger.station.bench.words.BenchText;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.input.KeyCode;

/**
 * Which key gives which command, as a person chose it and as it is remembered. Every command has a
 * key of its own, and none has one that the window uses or a gauge that types may send.
 */
public final class KeyChoices {
  private static final String REMEMBERED = "key.";
  private static final Map<Command, KeyCode> AT_FIRST =
      Map.of(
          Command.TAKE_BACK, KeyCode.Z,
          Command.SKIP, KeyCode.S,
          Command.READ, KeyCode.R,
          Command.CONFIRM, KeyCode.T,
          Command.LEAVE, KeyCode.L);
  // What the window's letters, its controls and its rooms are reached by.
  private static final Set<KeyCode> RESERVED =
      EnumSet.of(
          KeyCode.B,
          KeyCode.G,
          KeyCode.M,
          KeyCode.U,
          KeyCode.V,
          KeyCode.F11,
          KeyCode.TAB,
          KeyCode.ENTER,
          KeyCode.SPACE,
          KeyCode.ESCAPE,
          KeyCode.PAGE_UP,
          KeyCode.PAGE_DOWN,
          KeyCode.HOME,
          KeyCode.END,
          KeyCode.F10,
          KeyCode.CONTEXT_MENU);
  private static final Set<KeyCode> TYPED_BY_GAUGES =
      EnumSet.of(
          KeyCode.PERIOD,
          KeyCode.DECIMAL,
          KeyCode.COMMA,
          KeyCode.MINUS,
          KeyCode.SUBTRACT,
          KeyCode.PLUS,
          KeyCode.ADD);

  private final Memory memory;
  private final Map<Command, ObjectProperty<KeyCode>> keys = new EnumMap<>(Command.class);

  /** The keys that a memory holds; those of the first day where it holds none that can be. */
  public KeyChoices(Memory memory) {
    this.memory = memory;
    for (Command command : Command.values()) {
      keys.put(command, new SimpleObjectProperty<>(AT_FIRST.get(command)));
    }
    for (Command command : Command.values()) {
      remembered(command)
          .filter(key -> refusal(command, key).isEmpty())
          .ifPresent(keys.get(command)::set);
    }
  }

  /** The key of a command. */
  public ObservableValue<KeyCode> key(Command command) {
    return keys.get(command);
  }

  /** What a key asks for; empty when nothing. */
  public Optional<Command> command(KeyCode key) {
    return Stream.of(Command.values()).filter(each -> keys.get(each).get() == key).findFirst();
  }

  /**
   * Gives a command another key, and remembers it.
   *
   * @return why not, in a plain sentence; empty when it has the key now
   */
  public Optional<String> choose(Command command, KeyCode key) {
    Optional<String> refusal = refusal(command, key);
    if (refusal.isEmpty()) {
      keys.get(command).set(key);
      memory.put(REMEMBERED + command.id(), key.name());
    }
    return refusal;
  }

  private Optional<String> refusal(Command command, KeyCode key) {
    if (key == KeyCode.UNDEFINED) {
      return Optional.of(BenchText.KEYS_NAMELESS.with());
    } else if (key.isModifierKey()) {
      return Optional.of(BenchText.KEYS_ALONE.with());
    } else if (RESERVED.contains(key) || key.isArrowKey()) {
      return Optional.of(BenchText.KEYS_RESERVED.with(key.getName()));
    } else if (TYPED_BY_GAUGES.contains(key) || key.isDigitKey()) {
      return Optional.of(BenchText.KEYS_GAUGE.with(key.getName()));
    }
    return command(key)
        .filter(other -> other != command)
        .map(other -> BenchText.KEYS_TAKEN.with(key.getName(), other.words()));
  }

  private Optional<KeyCode> remembered(Command command) {
    return memory
        .get(REMEMBERED + command.id())
        .flatMap(
            name -> Stream.of(KeyCode.values()).filter(key -> key.name().equals(name)).findFirst());
  }
}
