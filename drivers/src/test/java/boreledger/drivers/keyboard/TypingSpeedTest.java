package boreledger.drivers.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypingSpeedTest {
  private static final double GAUGE_S = 0.016;
  private static final double PERSON_S = 0.15;

  private final TypingSpeed speed = new TypingSpeed();
  private final List<Keystrokes> known = new ArrayList<>();
  private double nowS;

  private void type(String text, double gapS) {
    for (char character : text.toCharArray()) {
      press(character, gapS);
    }
  }

  /** A character after a pause, during which somebody looks at the clock. */
  private void press(char character, double gapS) {
    if (gapS > TypingSpeed.LONGEST_GAP_S) {
      speed.pause(nowS + gapS).ifPresent(known::add);
    }
    nowS += gapS;
    known.addAll(speed.take(character, nowS));
  }

  private List<String> values() {
    return known.stream().filter(Keystrokes.Value.class::isInstance).map(Keystrokes::text).toList();
  }

  private String typed() {
    speed.pause(nowS + 1).ifPresent(known::add);
    StringBuilder text = new StringBuilder();
    known.stream()
        .filter(Keystrokes.Typed.class::isInstance)
        .forEach(each -> text.append(each.text()));
    return text.toString();
  }

  @Test
  void fastRunWithItsEnterIsAValueWithTheTimeOfItsEnd() {
    type("+0.012\r", GAUGE_S);
    assertEquals(List.of(new Keystrokes.Value("+0.012", nowS)), known);
  }

  @Test
  void slowTypingPassesThroughUnchanged() {
    type("top ring 0.45\n", PERSON_S);
    assertEquals(List.of(), values());
    assertEquals("top ring 0.45\n", typed());
  }

  @Test
  void valuesInQuickSuccessionAreEachAValue() {
    type("0.451\n0.452\n0.453\t", GAUGE_S);
    assertEquals(List.of("0.451", "0.452", "0.453"), values());
    assertEquals("", typed());
  }

  @Test
  void fastRunWithoutAnEndingWasTyped() {
    type("0.451", GAUGE_S);
    assertEquals("0.451", typed());
    assertEquals(List.of(), values());
  }

  @Test
  void heldKeyIsNoValue() {
    type("00000000\n", 0.033);
    assertEquals(List.of(), values());
    assertEquals("00000000\n", typed());
  }

  @Test
  void wordTypedVeryFastIsNoValue() {
    type("the\n", 0.04);
    assertEquals(List.of(), values());
    assertEquals("the\n", typed());
  }

  @Test
  void shortRunIsNoValue() {
    type("12\n", 0.04);
    assertEquals("12\n", typed());
  }

  @Test
  void personsCharactersBeforeAValueStayThePersons() {
    type("note", PERSON_S);
    press('+', PERSON_S);
    type("0.012\n", GAUGE_S);
    assertEquals(List.of("+0.012"), values());
    assertEquals("note", typed());
  }

  @Test
  void heldBackCharactersAreReleasedOnceAGaugeWouldHaveGoneOn() {
    speed.take('a', 1);
    assertEquals(Optional.empty(), speed.pause(1.04));
    assertEquals(Optional.of(new Keystrokes.Typed("a")), speed.pause(1.06));
    assertEquals(Optional.empty(), speed.pause(2));
  }

  private List<String> pieces() {
    return known.stream()
        .filter(Keystrokes.Pieces.class::isInstance)
        .map(each -> ((Keystrokes.Pieces) each).whole())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.06, 0.5, 0.95})
  void valueHeldUpOnceIsRefusedWholeWhereverItWasHeldUp(double stallS) {
    String sent = "-12.345\n";
    for (int cut = 1; cut < sent.length(); cut++) {
      known.clear();
      nowS += 5;
      type(sent.substring(0, cut), GAUGE_S);
      press(sent.charAt(cut), stallS);
      type(sent.substring(cut + 1), GAUGE_S);
      assertEquals(List.of(), values(), "held up after " + cut);
      assertEquals(List.of("-12.345"), pieces(), "held up after " + cut);
    }
  }

  @Test
  void valueHeldUpTwiceIsNoValueWhereverItWasHeldUp() {
    String sent = "-12.345\n";
    int tried = 0;
    for (int cut = 1; cut < sent.length(); cut++) {
      for (int second = cut + 1; second < sent.length(); second++) {
        nowS += 5;
        type(sent.substring(0, cut), GAUGE_S);
        press(sent.charAt(cut), 0.9);
        type(sent.substring(cut + 1, second), GAUGE_S);
        press(sent.charAt(second), 0.9);
        type(sent.substring(second + 1), GAUGE_S);
        tried++;
      }
    }
    assertEquals(21, tried);
    assertEquals(List.of(), values());
    assertEquals(21, pieces().size() + piecesOfAPerson());
  }

  /** Runs of fewer than three characters each, which a person's are. */
  private long piecesOfAPerson() {
    return known.stream()
        .filter(each -> each instanceof Keystrokes.Typed && each.text().endsWith("\n"))
        .count();
  }

  @Test
  void valueAfterAnotherThatWasHeldUpIsAValue() {
    type("0.4", GAUGE_S);
    press('5', 0.3);
    type("1\n", GAUGE_S);
    type("0.462\n", GAUGE_S);
    assertEquals(List.of("0.451"), pieces());
    assertEquals(List.of("0.462"), values());
  }

  @Test
  void valueLongAfterCharactersOfANumberIsAValue() {
    type("12.5", PERSON_S);
    press('0', 1.1);
    type(".451\n", GAUGE_S);
    assertEquals(List.of("0.451"), values());
    assertEquals("12.5", typed());
  }

  @Test
  void numberAPersonTypesSlowlyIsTheirs() {
    type("12.5\n", 0.06);
    assertEquals(List.of(), pieces());
    assertEquals("12.5\n", typed());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void personAndGaugeInTurnsAreToldApartAndNothingIsLost(long seed) {
    Random random = new Random(seed);
    List<String> sent = new ArrayList<>();
    StringBuilder written = new StringBuilder();
    for (int i = 0; i < 400; i++) {
      if (random.nextBoolean()) {
        String value = String.format(Locale.ROOT, "%+.3f", 2 * random.nextGaussian());
        // A person who typed digits without Enter waits; sooner, the two could be one value.
        press(value.charAt(0), 1.2);
        for (char character : (value.substring(1) + "\r").toCharArray()) {
          press(character, 0.008 + 0.03 * random.nextDouble());
        }
        sent.add(value);
      } else {
        double beforeS = 0;
        for (int k = random.nextInt(12); k >= 0; k--) {
          char character = "abc 0123456789.,\n".charAt(random.nextInt(17));
          // Gaps as of a fast typist; the shortest are a roll over two keys.
          double leastS = beforeS < 0.06 ? 0.06 : 0.03;
          beforeS = Math.max(leastS, 0.12 + 0.03 * random.nextGaussian());
          press(character, beforeS);
          written.append(character);
        }
      }
    }
    assertTrue(sent.size() > 100 && written.length() > 500);
    assertEquals(sent, values(), "seed " + seed);
    assertEquals(written.toString(), typed(), "seed " + seed);
  }
}
