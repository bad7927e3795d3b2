package boreledger.station.bench.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.LayoutCheck;
import boreledger.station.bench.words.Language;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** At every size nothing is cut off, nothing covers anything else, nothing leaves the window. */
class BenchLayoutTest {
  private static final int FEWEST_WORDS = 18;
  private static final double LEAST_DIGITS_PX = 40;

  @TempDir Path folder;

  @BeforeAll
  static void startTheToolkit() throws Exception {
    FxToolkit.registerPrimaryStage();
  }

  @AfterEach
  void speakEnglish() {
    Language.speak(Language.ENGLISH);
  }

  static Stream<Arguments> states() throws Exception {
    Path names = Files.createTempDirectory("bench-layout");
    try (BenchStates states = new BenchStates(names)) {
      List<Arguments> all = new ArrayList<>();
      for (Language language : Language.values()) {
        states.names().forEach(state -> all.add(Arguments.of(language, state)));
      }
      return all.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("states")
  void everythingFits(Language language, String state) throws Exception {
    Language.speak(language);
    try (BenchStates states = new BenchStates(folder)) {
      states.play(state);
      for (double[] size : Scenes.SIZES) {
        String where =
            language + ", " + state + " at " + (int) size[0] + "x" + (int) size[1] + ": ";
        WaitForAsyncUtils.asyncFx(
                () -> {
                  Scene scene = Scenes.bench(states.model(), size);
                  Scenes.layOut(scene);
                  check(scene, where);
                })
            .get();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void theChoiceOfKeysFits(Language language) throws Exception {
    Language.speak(language);
    try (BenchStates states = new BenchStates(folder)) {
      states.play("noticed");
      for (double[] size : Scenes.SIZES) {
        String where = language + ", keys at " + (int) size[0] + "x" + (int) size[1] + ": ";
        WaitForAsyncUtils.asyncFx(
                () -> {
                  Scene scene = Scenes.bench(states.model(), size);
                  Scenes.chooseKeys(scene);
                  Scenes.layOut(scene);
                  check(scene, where);
                })
            .get();
      }
    }
  }

  private static void check(Scene scene, String where) {
    LayoutCheck found = LayoutCheck.of(scene);
    List<String> faults = new ArrayList<>(found.faults());
    for (Node node : Scenes.visible(scene.getRoot())) {
      if (node instanceof Digits
          && ((javafx.scene.text.Text) node.lookup(".digit")).getFont().getSize()
              < LEAST_DIGITS_PX) {
        faults.add("digits too small to be read from afar");
      }
    }
    assertEquals(List.of(), faults, where);
    assertTrue(found.words() >= FEWEST_WORDS, where + "words seen " + found.words());
  }
}
