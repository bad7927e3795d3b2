package boreledger.station.bench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.look.Room;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.Test;

class LazyRoomTest {
  private static final KeyEvent KEY =
      new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.A, false, false, false, false);

  private final List<String> done = new ArrayList<>();
  private final Pane pane = new Pane();
  private final Room room = LazyRoom.of("bores", "Bores", this::build);

  private Room build() {
    done.add("built");
    return new Room("bores", "Bores", pane, () -> done.add("entered"), key -> true);
  }

  @Test
  void isNotBuiltBeforeSomebodyGoesThere() {
    assertFalse(room.keys().test(KEY));
    assertEquals(List.of(), room.view().getChildrenUnmodifiable());
    assertEquals(List.of(), done);
  }

  @Test
  void isBuiltOnceAndEnteredEachTime() {
    room.entered().run();
    room.entered().run();
    assertEquals(List.of("built", "entered", "entered"), done);
    assertEquals(List.of(pane), room.view().getChildrenUnmodifiable());
    assertTrue(room.keys().test(KEY));
  }
}
