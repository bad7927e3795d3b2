package boreledger.station.bench.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.look.Light;
import boreledger.station.bench.look.Sign;
import boreledger.station.bench.look.Styles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The style sheet: colours by role, readable pairs, no class that nobody knows. */
class BenchStyleTest {
  private static final double FOR_TEXT = 4.5;
  private static final double FOR_BIG_DIGITS = 7;
  private static final Set<String> JAVAFX_CLASSES =
      Set.of(
          "root",
          "column-header",
          "column-header-background",
          "filler",
          "label",
          "progress-bar",
          "track",
          "bar",
          "scroll-pane",
          "viewport",
          "scroll-bar",
          "thumb",
          "increment-button",
          "decrement-button",
          "increment-arrow",
          "decrement-arrow",
          "button",
          "text-field",
          "text-area",
          "combo-box",
          "combo-box-popup",
          "list-view",
          "list-cell",
          "arrow-button",
          "arrow");
  private static final Pattern ROLES = Pattern.compile("(?s)\\.root(?:\\.(bright|sun))? \\{(.*?)}");
  private static final Pattern ROLE = Pattern.compile("([a-z-]+): (#[0-9a-f]{6});");

  private final String sheet = sheet();

  @ParameterizedTest
  @EnumSource(Light.class)
  void everyPairThatCarriesTextCanBeRead(Light light) {
    int checked = 0;
    for (String[] pair : pairs()) {
      double contrast = contrast(color(light, pair[0]), color(light, pair[1]));
      assertTrue(contrast >= FOR_TEXT, pair[0] + " on " + pair[1] + ": " + contrast);
      checked++;
    }
    assertTrue(checked >= 16, "pairs " + checked);
  }

  @ParameterizedTest
  @EnumSource(Light.class)
  void theBigDigitsCanBeReadFromAfarFreshOrOld(Light light) {
    for (String ink : List.of("ink", "muted")) {
      double contrast = contrast(color(light, ink), color(light, "ground"));
      assertTrue(contrast >= FOR_BIG_DIGITS, ink + " on ground: " + contrast);
    }
  }

  /** WCAG 2.1: black on white is 21 to 1, its largest value; #767676 on white is known as 4.54. */
  @Test
  void contrastIsComputedAsTheStandardSays() {
    assertEquals(21, contrast("#000000", "#ffffff"), 1e-9);
    assertEquals(4.54, contrast("#ffffff", "#767676"), 0.005);
  }

  @Test
  void allLightsDefineTheSameRoles() {
    for (Light light : Light.values()) {
      assertEquals(roles(Light.DARK).keySet(), roles(light).keySet(), light.name());
    }
    assertTrue(roles(Light.DARK).size() >= 12, "roles " + roles(Light.DARK).keySet());
  }

  @Test
  void coloursStandInTheRolesAlone() {
    String rest = ROLES.matcher(sheet).replaceAll("").replaceAll("(?s)/\\*.*?\\*/", "");

    assertEquals(List.of(), find(rest, "#[0-9a-fA-F]{3,8}\\b|\\b(white|black|rgba?|hsb)\\b"));
    assertTrue(rest.length() > 2_000, "style rules " + rest.length());
  }

  @Test
  void noColourIsMixedInTheCode() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/boreledger/station/bench"))) {
      List<Path> all = files.filter(file -> file.toString().endsWith(".java")).toList();
      assertTrue(all.size() > 30, "files " + all.size());
      for (Path file : all) {
        String source = Files.readString(file);
        assertEquals(
            List.of(), find(source, "javafx\\.scene\\.paint|#[0-9a-f]{6}"), file.toString());
      }
    }
  }

  @Test
  void theSheetAndTheCodeKnowTheSameClasses() throws IllegalAccessException {
    Set<String> inSheet = new TreeSet<>();
    String selectors = sheet.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?s)\\{.*?}", " ");
    Matcher matcher = Pattern.compile("\\.([a-z-]+)").matcher(selectors);
    while (matcher.find()) {
      inSheet.add(matcher.group(1));
    }
    inSheet.removeAll(JAVAFX_CLASSES);
    inSheet.removeIf(name -> name.equals("sign") || name.startsWith("sign-"));

    assertEquals(String.join("\n", inCode()), String.join("\n", inSheet));
  }

  @Test
  void everySignHasItsShape() {
    for (Sign.Kind kind : Sign.Kind.values()) {
      assertTrue(sheet.contains("." + kind.style()), kind.style());
    }
  }

  private static Set<String> inCode() throws IllegalAccessException {
    Set<String> names = new TreeSet<>();
    for (Field field : Styles.class.getDeclaredFields()) {
      if (Modifier.isStatic(field.getModifiers()) && field.getType() == String.class) {
        names.add((String) field.get(null));
      }
    }
    return names;
  }

  /** The pairs that the sheet's own head lists. */
  private List<String[]> pairs() {
    List<String[]> pairs = new ArrayList<>();
    Matcher lines = Pattern.compile("(?m)^ {4}([a-z, -]+) on ([a-z-]+)$").matcher(sheet);
    while (lines.find()) {
      for (String ink : lines.group(1).split(",")) {
        pairs.add(new String[] {ink.strip(), lines.group(2)});
      }
    }
    return pairs;
  }

  private String color(Light light, String role) {
    String color = roles(light).get(role);
    assertTrue(color != null, "no role " + role);
    return color;
  }

  private Map<String, String> roles(Light light) {
    Matcher blocks = ROLES.matcher(sheet);
    while (blocks.find()) {
      Map<String, String> roles = new HashMap<>();
      Matcher role = ROLE.matcher(blocks.group(2));
      while (role.find()) {
        roles.put(role.group(1), role.group(2));
      }
      if (!roles.isEmpty()
          && light.style().equals(Objects.requireNonNullElse(blocks.group(1), ""))) {
        return roles;
      }
    }
    throw new IllegalStateException("no roles for " + light);
  }

  /** Contrast of two colours (W3C, Web Content Accessibility Guidelines 2.1, definitions). */
  private static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String color) {
    int rgb = Integer.parseInt(color.substring(1), 16);
    return 0.2126 * linear(rgb >> 16 & 0xff)
        + 0.7152 * linear(rgb >> 8 & 0xff)
        + 0.0722 * linear(rgb & 0xff);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static List<String> find(String text, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    List<String> found = new ArrayList<>();
    while (matcher.find()) {
      found.add(matcher.group());
    }
    return found;
  }

  private static String sheet() {
    try (var in = BenchStyleTest.class.getResourceAsStream("/boreledger/station/bench/bench.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
