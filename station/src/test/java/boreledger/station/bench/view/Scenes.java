package boreledger.station.bench.view;

import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.window.StationScene;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.WindowText;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Pane;

/** Scenes that no window shows. */
final class Scenes {
  /**
   * The window sizes that the bench is held against, in pixels; the first is 1024 x 700 less a
   * frame.
   */
  static final double[][] SIZES = {
    {1016, 660}, {1024, 700}, {1280, 800}, {1920, 1080}, {3840, 2160}
  };

  // The rail has to hold the names of all rooms.
  private static final List<Text> OTHERS =
      List.of(WindowText.ROOM_START, WindowText.ROOM_BORES, WindowText.ROOM_GAPS, LedgerText.ROOM);

  private Scenes() {}

  /** The bench room in the dark light. */
  static StationScene bench(BenchModel model, double[] size) {
    return bench(model, size, Light.DARK);
  }

  /** The bench room. */
  static StationScene bench(BenchModel model, double[] size, Light light) {
    Appearance appearance = new Appearance();
    appearance.light().set(light);
    List<Room> rooms =
        new ArrayList<>(List.of(BenchRoom.of(model, new KeyChoices(new Memory(null)))));
    for (Text name : OTHERS) {
      rooms.add(new Room(name.key(), name.with(), new Pane()));
    }
    return new StationScene(model, rooms, appearance, size[0], size[1]);
  }

  /** Shows what is seen while a key is being chosen. */
  static void chooseKeys(Scene scene) {
    ((ToggleButton) scene.lookup("#choose-keys")).fire();
    ((Button) scene.lookup("#command-take-back")).fire();
  }

  /** Applies styles and lays out until the sizes that depend on each other have settled. */
  static void layOut(Scene scene) {
    for (int pass = 0; pass < 4; pass++) {
      scene.getRoot().applyCss();
      scene.getRoot().layout();
    }
  }

  /** Every node that can be seen, from the root down. */
  static List<Node> visible(Parent root) {
    List<Node> nodes = new ArrayList<>();
    collect(root, nodes);
    return nodes;
  }

  private static void collect(Node node, List<Node> nodes) {
    if (!node.isVisible()) {
      return;
    }
    nodes.add(node);
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, nodes));
    }
  }
}
