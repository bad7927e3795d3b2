package boreledger.drivers.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.Problem;
import boreledger.drivers.line.Bytes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GaugeProfilesTest {
  @TempDir Path folder;

  @Test
  void completeProfileIsReadAsItStands() throws Exception {
    Path file = Files.writeString(folder.resolve("signed.gauge.toml"), ProfileSample.TEXT);
    GaugeProfile profile = GaugeProfiles.read(file);
    assertEquals("signed.gauge.toml", profile.source().fileName());
    assertEquals(ProfileSample.TEXT, profile.source().text());
    assertEquals("Signed decimal line", profile.name());
    assertEquals(Reads.DEVIATION, profile.reads());
    assertEquals(LengthUnit.MM, profile.unit());
    assertEquals(0.001, profile.resolutionMm());
    assertEquals(0.002, profile.maxErrorMm());
    assertEquals(Set.of(), profile.maxErrorIncludes());
    assertNull(profile.repeatabilityMm());
    assertEquals(
        new LineSettings(4800, 7, LineSettings.Parity.EVEN, LineSettings.StopBits.TWO, true, false),
        profile.line());
    assertEquals(new FrameSpec.Delimited(Bytes.ofHex("0d0a"), 64), profile.frame());
    assertEquals(
        "^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$",
        ((DecodeSpec.ByPattern) profile.decode()).pattern().pattern());
    assertEquals(new PickSpec.Rock(2.0, 1.5, 3), profile.pick());
  }

  @Test
  void hashIsTheSha256OfTheTextsBytes() throws Exception {
    // Computed by sha256sum of GNU coreutils 9.1 from the same bytes.
    String expected = "f38fe0c1fcefde1339e856a58915186d72363bf3d1b5eb8de6baec2c74ea8452";
    assertEquals(expected, ProfileSample.parse(ProfileSample.TEXT).source().sha256());
  }

  @Test
  void lineSettingsMayBeLeftOut() throws Exception {
    String text = ProfileSample.TEXT.replaceAll("(?s)\\[line].*\\[frame]", "[frame]");
    assertEquals(LineSettings.DEFAULT, ProfileSample.parse(text).line());
  }

  @Test
  void optionalKeysAreRead() throws Exception {
    String more =
        "max_error_mm = 0.002\nrepeatability_mm = 0.0005\n"
            + "max_error_includes = ['resolution', 'repeatability']";
    GaugeProfile profile = ProfileSample.parse(ProfileSample.with("max_error_mm = 0.002", more));
    assertEquals(0.0005, profile.repeatabilityMm());
    assertEquals(
        Set.of(MaxErrorPart.RESOLUTION, MaxErrorPart.REPEATABILITY), profile.maxErrorIncludes());
  }

  @Test
  void builtInProfilesHaveDistinctNames() {
    List<GaugeProfile> profiles = GaugeProfiles.builtIn();
    assertTrue(profiles.size() >= 5);
    assertEquals(
        profiles.size(),
        profiles.stream().map(GaugeProfile::name).collect(Collectors.toSet()).size());
  }

  @Test
  void firstFolderThatHasAProfileWins() throws Exception {
    Path first = Files.createDirectory(folder.resolve("first"));
    Path second = Files.createDirectory(folder.resolve("second"));
    Path third = Files.createDirectory(folder.resolve("third"));
    String name = "name = \"Signed decimal line\"";
    Files.writeString(second.resolve("a.gauge.toml"), ProfileSample.with(name, "name = 'two'"));
    Files.writeString(third.resolve("a.gauge.toml"), ProfileSample.with(name, "name = 'three'"));
    List<Path> folders = List.of(first, second, third);
    assertEquals("two", GaugeProfiles.find("a.gauge.toml", folders).name());
    assertEquals("two", GaugeProfiles.find("a", folders).name());
  }

  @Test
  void folderGoesBeforeABuiltInProfileOfTheSameName() throws Exception {
    String found = GaugeProfiles.find("ascii-line-size", List.of()).name();
    assertEquals("ASCII line, size", found);
    Files.writeString(folder.resolve("ascii-line-size.gauge.toml"), ProfileSample.TEXT);
    assertEquals(
        "Signed decimal line", GaugeProfiles.find("ascii-line-size", List.of(folder)).name());
  }

  @Test
  void profileNowhereToBeFoundTellsWhereItLooked() {
    assertEquals(
        "b.gauge.toml: no such gauge profile; looked in "
            + folder
            + ", among the built-in ascii-line-deviation.gauge.toml, ascii-line-size.gauge.toml,"
            + " ieee-488-2-size.gauge.toml, keyboard-line-size.gauge.toml,"
            + " modbus-rtu-size.gauge.toml",
        Problem.of(() -> GaugeProfiles.find("b", List.of(folder))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"../a", "/etc/a", "x\\a", "c:a", ""})
  void nameWithAFolderIsRefused(String name) {
    assertEquals(
        name + ": not a gauge profile's name, expected a file name without a folder",
        Problem.of(() -> GaugeProfiles.find(name, List.of(folder))));
  }

  @Test
  void brokenProfileInAFolderIsNotPassedOver() throws Exception {
    Path file = Files.writeString(folder.resolve("ascii-line-size.gauge.toml"), "format = 1\n");
    String message = Problem.of(() -> GaugeProfiles.find("ascii-line-size", List.of(folder)));
    assertEquals(file + ":1:10: format is 1, expected one of \"boreledger-gauge/1\"", message);
    assertFalse(message.contains("\n"));
  }
}
