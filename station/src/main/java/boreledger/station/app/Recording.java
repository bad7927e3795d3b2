package boreledger.station.app;

import boreledger.drivers.capture.CaptureHeader;
import boreledger.drivers.capture.CaptureWriter;
import boreledger.drivers.capture.RecordingLine;
import boreledger.drivers.line.Line;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.ProfileSource;
import boreledger.station.session.SessionStart;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A capture file of a live session, with the gauge's profile beside it, so that the two can be
 * replayed wherever they are taken.
 */
final class Recording {
  private Recording() {}

  /**
   * Records an open line from now on; closes it when that cannot be.
   *
   * @throws UsageProblem if there is such a file already, or another profile of the same name
   */
  static Line of(Line line, Path file, SessionStart start, SittingClock clock) throws UsageProblem {
    try {
      Path profile = beside(file, start.gauge().source());
      CaptureHeader header =
          new CaptureHeader(
              profile.getFileName().toString(),
              start.measure(),
              start.ring() == null ? null : start.ring().name(),
              clock.at(0),
              start.settingTempC(),
              start.blockTempC());
      return new RecordingLine(line, CaptureWriter.create(file, header));
    } catch (FileAlreadyExistsException e) {
      line.close();
      throw new UsageProblem(file + ": is there already, and a recording overwrites nothing");
    } catch (IOException e) {
      line.close();
      throw new UsageProblem(file + ": cannot be written, " + e.getMessage());
    } catch (UsageProblem problem) {
      line.close();
      throw problem;
    }
  }

  private static Path beside(Path file, ProfileSource source) throws IOException, UsageProblem {
    if (Files.exists(file)) {
      throw new FileAlreadyExistsException(file.toString());
    }
    String ending = source.fileName().endsWith(GaugeProfiles.ENDING) ? "" : GaugeProfiles.ENDING;
    Path profile = file.resolveSibling(source.fileName() + ending);
    if (!Files.exists(profile)) {
      Files.writeString(profile, source.text(), StandardOpenOption.CREATE_NEW);
    } else if (!Files.readString(profile).equals(source.text())) {
      throw new UsageProblem(
          profile + ": is another profile of the same name; record into another folder");
    }
    return profile;
  }
}
