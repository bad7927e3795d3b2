package boreledger.station.bench.jobform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.ChosenFile;
import boreledger.station.bench.RoomPictures;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Light;
import boreledger.station.bench.words.Language;
import boreledger.station.job.DisplayUnit;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.table.Tables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The form in the real window without a display, filled in by keyboard alone. */
@ExtendWith(ApplicationExtension.class)
class JobFormTest {
  @TempDir Path folder;
  private final Appearance appearance = new Appearance();
  private final ChosenFile files = new ChosenFile();
  private final List<Path> saved = new ArrayList<>();
  private int left;
  private Stage stage;
  private FxRobot robot;

  @Start
  private void keep(Stage newStage) {
    stage = newStage;
  }

  @BeforeEach
  void take(FxRobot newRobot) {
    robot = newRobot;
  }

  @Test
  void thePumphouseIsMadeFromNothingByKeyboard() throws Exception {
    open(folder);
    assertEquals("name", focusId());
    type("Pumphouse three");
    enter(1);
    type("3");
    robot.type(KeyCode.RIGHT, KeyCode.LEFT);
    enter(1);
    type("96", "104");
    choose("block-material", 1);
    type("10,8");
    type("96", "96.03", "96.15", "0.05", "0.03", "0.25 0.5 1", "0.05");
    type("12 60 108");
    enter(2);
    type("96.002 mm", "0.001");
    robot.write("11.5");
    ring(1, "top", 2, "11.2", "9", "113", "0.3", "0.75");
    choose("ring-1-rule", 4);
    type("12 60 108");
    ring(2, "second", 1, "11.4", "13.5", "117.5", "0.35", "0.85");
    enter(1);
    type("0.64", "12 60 108");
    ring(3, "oil-rail", 0, "11.7", "18", "122", "0.4", "1");
    enter(1);
    type("0.7");
    robot.write("60 108");
    press("more-ring-temp");
    type("190", "160", "130");
    robot.write("0.05");

    save();

    Path file = folder.resolve("pumphouse-three.job.toml");
    assertEquals(List.of(file), saved, words("form-state"));
    assertSameJob(Files.readString(Forms.SAMPLE), Files.readString(file));
  }

  @Test
  void aMistakeIsToldAtItsFieldOnceItWasLeftAndGoesWhenItIsMended() throws Exception {
    open(Forms.SAMPLE);
    write("taper-max", "97");
    robot.type(KeyCode.TAB);

    assertEquals(
        "Largest taper is 97.0, expected 0 mm to below the bore of 96.0 mm",
        words("taper-max-problem"));
    assertEquals("To mend: Limits: Largest taper", words("form-state"));
    assertTrue(node("taper-max").getAccessibleText().contains("expected 0 mm to below"));

    write("taper-max", "0,05");
    assertNull(shown("taper-max-problem"));
    assertEquals("In the file: 0.05 mm", words("taper-max-note"));
  }

  @Test
  void nobodyIsToldOfWhatTheyHaveNotComeTo() throws Exception {
    open(folder);

    assertNull(shown("stroke-problem"));
    assertTrue(words("form-state").startsWith("Still needed: Job: Job's name"));

    save();

    assertEquals("Still needed", words("stroke-problem"));
    assertEquals("name", focusId());
    assertEquals(List.of(), saved);
  }

  @Test
  void incompleteNumbersAndOtherUnitsAreToldInWords() throws Exception {
    open(Forms.SAMPLE);
    write("nominal-bore", "96 ft");
    write("depths", "12,60,108");
    write("cylinders", "three");

    assertEquals(
        "This unit does not belong here; expected mm, in or \u00b5m",
        words("nominal-bore-problem"));
    assertEquals(
        "These commas can be read in two ways; put blanks or semicolons between numbers",
        words("depths-problem"));
    assertEquals("Not understood as a whole number; 3 would be", words("cylinders-problem"));
  }

  @Test
  void inchesAreTakenExactlyAndShowWhatStandsInTheFile() throws Exception {
    open(Forms.SAMPLE);
    robot.interact(() -> appearance.unit().set(DisplayUnit.IN));

    assertEquals("3.779528", field("nominal-bore").getText());
    assertEquals("In the file: 96.0 mm", words("nominal-bore-note"));
    assertTrue(words("form-state").endsWith("Nothing changed"), "looking changes nothing");

    write("nominal-bore", "3.78");
    assertEquals("In the file: 96.012 mm", words("nominal-bore-note"));
    write("nominal-bore", "3.779528");
    assertEquals("In the file: 96.0 mm", words("nominal-bore-note"), "typed back");
  }

  @Test
  void aFileWithCommentsIsAskedAboutAndKept() throws Exception {
    Path file = copyOfSample();
    open(file);
    write("stroke", "105");

    save();

    assertEquals(
        "pumphouse.job.toml has comments, which saving here loses", words("form-question"));
    assertEquals("form-no", focusId());
    assertEquals(Files.readString(Forms.SAMPLE), Files.readString(file));

    robot.press(KeyCode.SHIFT).type(KeyCode.TAB).release(KeyCode.SHIFT);
    robot.type(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();

    assertEquals(List.of(file), saved);
    assertTrue(Files.readString(file).contains("stroke_mm = 105.0"));
    assertEquals(
        Files.readString(Forms.SAMPLE),
        Files.readString(folder.resolve("pumphouse.job.toml.before")));
  }

  @Test
  void anotherFileIsNotOverwrittenWithoutAWord() throws Exception {
    Path file = copyOfSample();
    Path other = folder.resolve("other.job.toml");
    Files.writeString(other, "precious");
    open(file);
    write("form-file", other.toString());

    save();
    robot.type(KeyCode.ESCAPE);

    assertEquals("precious", Files.readString(other));
    assertEquals(List.of(), saved);
    assertEquals(0, left, "Escape answers the question first");
  }

  @Test
  void aFileThatSomebodyChangedMeanwhileIsAskedAbout() throws Exception {
    Path file = copyOfSample();
    open(file);
    Files.writeString(file, "changed");

    save();

    assertTrue(words("form-question").contains("was changed by someone else"));
    assertEquals("changed", Files.readString(file));
  }

  @Test
  void escapeLeavesAtOnceOrAsksWhenSomethingWouldBeLost() throws Exception {
    open(Forms.SAMPLE);
    robot.type(KeyCode.ESCAPE);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(1, left);

    write("stroke", "105");
    robot.type(KeyCode.ESCAPE);
    assertEquals("Leave without saving?", words("form-question"));
    assertEquals(1, left);
    robot.interact(() -> ((Button) node("form-yes")).fire());
    assertEquals(2, left);
  }

  @Test
  void whatIsOptionalIsFoldedAwayUntilItHasSomething() throws Exception {
    open(Forms.SAMPLE);

    assertNull(shown("liner-material"));
    assertNotNull(shown("ring-temp"), "the sample gives running temperatures");
    assertNull(shown("ring-1-target"), "its rule is chosen");
    press("more-liner-material");
    assertNotNull(shown("liner-material"));
    robot.interact(() -> ((ToggleButton) node("setting-kind-micrometer")).fire());
    assertNotNull(shown("setting-max-error"));
  }

  @Test
  void anOpenListHasTheColoursOfTheWindow() throws Exception {
    open(Forms.SAMPLE);
    ComboBox<?> box = (ComboBox<?>) node("ring-1-rule");
    robot.interact(
        () -> {
          appearance.light().set(Light.BRIGHT);
          box.requestFocus();
          box.show();
        });
    var list = ((ComboBoxListViewSkin<?>) box.getSkin()).getPopupContent();
    assertTrue(list.getScene().getRoot().getStyleClass().contains("bright"));
    if (System.getProperty("bench.snapshots") != null) {
      robot.interact(
          () -> {
            try {
              RoomPictures.save(
                  list.getScene().snapshot(null),
                  Path.of(System.getProperty("bench.snapshots"), "list.png"));
            } catch (Exception e) {
              throw new IllegalStateException(e);
            }
          });
    }
    robot.type(KeyCode.ESCAPE);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(box.isShowing());
    assertEquals(0, left, "Escape closes the list alone");
  }

  @Test
  void lettersInAListChooseInItAndAreNoKeysOfTheWindow() throws Exception {
    open(folder);
    ComboBox<?> box = (ComboBox<?>) node("block-material");
    robot.interact(box::requestFocus);

    robot.type(KeyCode.G);
    WaitForAsyncUtils.waitForFxEvents();

    assertTrue(box.getConverter() != null && shownIn(box).startsWith("grey-iron"), shownIn(box));
    assertEquals(Language.ENGLISH, appearance.language().get());
    robot.type(KeyCode.B, KeyCode.U, KeyCode.M);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(Light.DARK, appearance.light().get());
    assertNull(appearance.unit().get());
  }

  private static String shownIn(ComboBox<?> box) {
    return ((Choices.Choice) box.getValue()).words();
  }

  @Test
  void theEnginesPictureFollowsWhatIsTyped() throws Exception {
    open(folder);
    assertTrue(node("form-engine").getAccessibleText().contains("comes with its cylinders"));

    write("cylinders", "6");
    robot.interact(() -> ((ToggleButton) node("arrangement-vee")).fire());

    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(
        "An engine of 6 cylinders, in a vee, from the end and from above",
        node("form-engine").getAccessibleText());
    assertEquals(List.of("1", "2", "3", "4", "5", "6"), numbersDrawn());
    write("cylinders", "8");
    assertEquals(8, numbersDrawn().size());
    write("cylinders", "a lot");
    assertEquals(List.of(), numbersDrawn());
  }

  private List<String> numbersDrawn() {
    WaitForAsyncUtils.waitForFxEvents();
    return robot.from(node("form-engine")).lookup(".label").queryAllAs(Label.class).stream()
        .map(Label::getText)
        .sorted()
        .toList();
  }

  @Test
  void whereItIsSavedIsChosenInTheSystemsWindowInTheFolderOfTheJob() throws Exception {
    Path file = copyOfSample();
    open(file);
    files.chosen = folder.resolve("deep").resolve("second.job.toml");

    press("form-choose-file");

    assertEquals(folder, files.asked.get(0).folder());
    assertEquals("pumphouse.job.toml", files.asked.get(0).name());
    assertEquals(files.chosen.toString(), field("form-file").getText());
    files.chosen = null;
    press("form-choose-file");
    assertTrue(field("form-file").getText().endsWith("second.job.toml"), "none was chosen");
  }

  @Test
  void ringsAreAddedDuplicatedAndRemoved() throws Exception {
    open(Forms.SAMPLE);
    press("duplicate-ring-1");
    assertEquals("ring-2-ring-name", focusId());
    assertEquals("", field("ring-2-ring-name").getText());
    assertEquals("9", field("ring-2-travel-top").getText());
    press("remove-ring-2");
    press("remove-ring-1");

    assertEquals("second", field("ring-1-ring-name").getText());
    assertNull(shown("ring-3-ring-name"));
  }

  @Test
  void aFileThatIsNoJobIsNotShownInPart() throws Exception {
    Path file = folder.resolve("x.job.toml");
    Files.writeString(file, "speed = 3");
    open(file);

    assertTrue(words("form-unreadable").contains("unknown key speed"), words("form-unreadable"));
    robot.type(KeyCode.ESCAPE);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(1, left);
  }

  @Test
  void everyLabelIsBoundAndEveryInputSpeaks() throws Exception {
    open(Forms.SAMPLE);
    var labels = robot.lookup(".form-label").queryAllAs(Label.class);
    assertTrue(labels.size() > 40, "labels " + labels.size());
    labels.forEach(label -> assertNotNull(label.getLabelFor(), label.getText()));
    var fields = robot.lookup(it -> it instanceof TextField).queryAllAs(TextField.class);
    assertTrue(fields.size() > 35, "fields " + fields.size());
    fields.forEach(it -> assertFalse(it.getAccessibleText().isBlank(), it.getId()));
  }

  private void open(Path file) throws Exception {
    WaitForAsyncUtils.asyncFx(
            () -> {
              JobForm form = Forms.form(file, appearance, files, saved::add, () -> left++);
              stage.setScene(Forms.scene(form, appearance, new double[] {1280, 800}, Light.DARK));
              stage.show();
              form.applyCss();
              form.layout();
              form.begin();
              return null;
            })
        .get();
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Types into the field with the focus and those that follow it. */
  private void type(String... texts) {
    for (String text : texts) {
      robot.write(text);
      robot.type(KeyCode.ENTER);
    }
  }

  private void enter(int times) {
    robot.type(KeyCode.ENTER, times);
  }

  private void choose(String id, int down) {
    assertEquals(id, focusId());
    robot.type(KeyCode.DOWN, down);
    assertEquals(down, ((ComboBox<?>) node(id)).getSelectionModel().getSelectedIndex());
    enter(1);
  }

  /** Leaves the focus on the field of the rule. */
  private void ring(int number, String name, int material, String... numbers) {
    press("add-ring");
    type(name);
    choose("ring-" + number + "-ring-material", material);
    type(numbers);
    assertEquals("ring-" + number + "-rule", focusId());
  }

  /** A button by its space bar. */
  private void press(String id) {
    robot.interact(() -> node(id).requestFocus());
    robot.type(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void write(String id, String text) {
    robot.interact(
        () -> {
          node(id).requestFocus();
          field(id).setText(text);
        });
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void save() {
    robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private String focusId() {
    WaitForAsyncUtils.waitForFxEvents();
    Node owner = stage.getScene().getFocusOwner();
    return owner == null ? "nothing" : String.valueOf(owner.getId());
  }

  private Node node(String id) {
    return stage.getScene().lookup("#" + id);
  }

  private TextField field(String id) {
    return (TextField) node(id);
  }

  private String words(String id) {
    WaitForAsyncUtils.waitForFxEvents();
    return ((Labeled) node(id)).getText();
  }

  /** The node, or null when it cannot be seen. */
  private Node shown(String id) {
    WaitForAsyncUtils.waitForFxEvents();
    Node node = node(id);
    for (Node up = node; up != null; up = up.getParent()) {
      if (!up.isVisible()) {
        return null;
      }
    }
    return node;
  }

  private Path copyOfSample() throws Exception {
    Path file = folder.resolve("pumphouse.job.toml");
    Files.copy(Forms.SAMPLE, file);
    return file;
  }

  private static void assertSameJob(String expected, String found) throws Exception {
    JobFiles files = new JobFiles(Tables.of(List.of()));
    Job one = files.parse("job", expected);
    Job other = files.parse("job", found);
    assertEquals(
        one.toString().substring(one.toString().indexOf(", name=")),
        other.toString().substring(other.toString().indexOf(", name=")));
  }
}
