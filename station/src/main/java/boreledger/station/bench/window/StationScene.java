package boreledger.station.bench.window;

import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.look.Rail;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.look.Switch;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.words.Language;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.WindowText;
import boreledger.station.job.DisplayUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Rail and rooms, the keys, and one font size that fits everything to the window. */
public final class StationScene extends Scene {
  /** The window's width at first, in pixels. */
  public static final double WIDTH_PX = 1280;

  /** The window's height at first, in pixels. */
  public static final double HEIGHT_PX = 800;

  private static final double FONT_PX = 15;
  private static final double LEAST_FONT_PX = 12;
  private static final String STYLE = "/boreledger/station/bench/bench.css";
  private static final Map<Light, Text> LIGHTS =
      Map.of(
          Light.DARK, WindowText.LIGHT_DARK,
          Light.BRIGHT, WindowText.LIGHT_BRIGHT,
          Light.SUN, WindowText.LIGHT_SUN);

  private final BenchModel model;
  private final Appearance appearance;
  private final List<Room> rooms;
  private final ObjectProperty<Room> shown;
  private final HBox root = new HBox();

  /**
   * A scene that shows the first of its rooms.
   *
   * @param model the bench, for its keys
   * @param rooms in the order of the rail, at least one
   */
  public StationScene(
      BenchModel model, List<Room> rooms, Appearance appearance, double width, double height) {
    super(new HBox(), width, height);
    this.model = model;
    this.appearance = appearance;
    this.rooms = List.copyOf(rooms);
    this.shown = new SimpleObjectProperty<>(rooms.get(0));
    setRoot(root);
    root.getChildren().addAll(new Rail(this.rooms, shown, switches()), shown.get().view());
    shown.subscribe(this::enter);
    getStylesheets().add(StationScene.class.getResource(STYLE).toExternalForm());
    widthProperty().addListener(changed -> fit());
    heightProperty().addListener(changed -> fit());
    fit();
    appearance.light().subscribe(this::light);
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
  }

  /** The room that is shown; it can be changed from outside. */
  public ObjectProperty<Room> shownRoom() {
    return shown;
  }

  /** Goes to the room of an id, if there is one. */
  public void go(String id) {
    rooms.stream().filter(room -> room.id().equals(id)).findFirst().ifPresent(shown::set);
  }

  private void enter(Room room) {
    HBox.setHgrow(room.view(), Priority.ALWAYS);
    root.getChildren().set(1, room.view());
    room.entered().run();
  }

  private List<Node> switches() {
    return List.of(
        Switch.through("unit", appearance.unit(), StationScene::otherUnit, StationScene::unit),
        Switch.of("sound", WindowText.SOUND_ON, WindowText.SOUND_OFF, model.mutedProperty()),
        Switch.of("voice", WindowText.VOICE_OFF, WindowText.VOICE_ON, model.spokenProperty()),
        Switch.through("light", appearance.light(), Light::next, light -> LIGHTS.get(light).with()),
        language(),
        Switch.of("screen", WindowText.SCREEN_WINDOW, WindowText.SCREEN_FULL, appearance.full()));
  }

  private Node language() {
    Button button =
        Switch.through(
            "language", appearance.language(), Language::next, StationScene::languageWords);
    appearance
        .language()
        .subscribe(now -> button.setAccessibleText(WindowText.LANGUAGE_SPOKEN.with(now.title())));
    return button;
  }

  private static String languageWords(Language wanted) {
    boolean isSpoken = wanted == Language.spoken();
    return (isSpoken ? WindowText.LANGUAGE_KEY : WindowText.LANGUAGE_NEXT_START)
        .with(wanted.title());
  }

  private static DisplayUnit otherUnit(DisplayUnit unit) {
    if (unit == null) {
      return DisplayUnit.MM;
    }
    return unit == DisplayUnit.MM ? DisplayUnit.IN : null;
  }

  private static String unit(DisplayUnit unit) {
    if (unit == null) {
      return WindowText.UNIT_OF_JOB.with();
    }
    return (unit == DisplayUnit.MM ? WindowText.UNIT_MM : WindowText.UNIT_IN).with();
  }

  private void pressed(KeyEvent event) {
    boolean writing = takesLetters(getFocusOwner());
    if (!writing && shown.get().keys().test(event)) {
      event.consume();
    } else if (event.isShortcutDown() && event.getCode().isDigitKey()) {
      goByNumber(event);
    } else if (event.getCode() == KeyCode.F11) {
      appearance.full().set(!appearance.full().get());
      event.consume();
    } else if (!writing && !event.isShortcutDown()) {
      letter(event);
    }
  }

  /** Where letters mean something themselves: in what is typed, and in lists that open. */
  private static boolean takesLetters(Node node) {
    return node instanceof TextInputControl || node instanceof ComboBoxBase;
  }

  private void goByNumber(KeyEvent event) {
    int place = event.getCode().getCode() - KeyCode.DIGIT1.getCode();
    if (place >= 0 && place < rooms.size()) {
      shown.set(rooms.get(place));
      event.consume();
    }
  }

  private void letter(KeyEvent event) {
    switch (event.getCode()) {
      case M -> model.mutedProperty().set(!model.mutedProperty().get());
      case V -> model.spokenProperty().set(!model.spokenProperty().get());
      case B -> appearance.light().set(appearance.light().get().next());
      case U -> appearance.unit().set(otherUnit(appearance.unit().get()));
      case G -> appearance.language().set(appearance.language().get().next());
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void light(Light light) {
    for (Light each : Light.values()) {
      root.getStyleClass().remove(each.style());
    }
    if (!light.style().isEmpty()) {
      root.getStyleClass().add(light.style());
    }
  }

  private void fit() {
    double share = Math.min(getWidth() / WIDTH_PX, getHeight() / HEIGHT_PX);
    double px = Math.max(LEAST_FONT_PX, FONT_PX * share);
    root.setStyle(String.format(Locale.ROOT, "-fx-font-size: %.2fpx", px));
  }
}
