package boreledger.station.bench.start;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.serial.PortIdentity;
import boreledger.station.app.LiveRequest;
import boreledger.station.bench.lesson.LessonServices;
import boreledger.station.job.Job;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** What the room needs from the rest of the program. Called in the background. */
public interface StartServices extends LessonServices {
  /** Reads a job file whole. */
  Job job(Path file) throws FileProblem;

  /** The tables that materials and rules are chosen from. */
  Tables tables() throws FileProblem;

  /** The serial ports that the system lists. */
  List<PortIdentity> ports();

  /**
   * Gets everything ready and begins to gauge.
   *
   * @throws Exception with a one-line message that says what stands in the way
   */
  void begin(LiveRequest request) throws Exception;

  /** Whether something is being gauged. */
  boolean isGauging();

  /** Stops what is being gauged; its session can be gone on with. */
  void stopGauging();

  /**
   * Listens to a gauge, and keeps nothing, until it is told to stop.
   *
   * @param heard told what is heard, line by line
   * @return stops it
   * @throws Exception with a one-line message when the line cannot be opened
   */
  Runnable listen(Path gauge, String port, Consumer<String> heard) throws Exception;
}
