package boreledger.station.app;

import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.report.BuildSheet;
import boreledger.station.report.PrintedSheet;
import boreledger.station.report.SheetFacts;
import boreledger.station.results.JobComputing;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobSessions;
import boreledger.station.session.Version;
import boreledger.station.wording.LengthFormat;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.Locale;

/** Writes the build sheet of a job in a ledger. A file is there as a whole or not at all. */
public final class ReportFile {
  private final ReportRequest request;
  private final Clock clock;

  private ReportFile(ReportRequest request, Clock clock) {
    this.request = request;
    this.clock = clock;
  }

  /**
   * Writes a sheet.
   *
   * @param clock tells when it is made
   * @throws LedgerFault if there is no such ledger, or it cannot be read
   * @throws UsageProblem if the ledger has no such job, or the file is there or cannot be written
   */
  public static ReportAnswer write(ReportRequest request, Clock clock)
      throws LedgerFault, UsageProblem {
    return new ReportFile(request, clock).write();
  }

  private ReportAnswer write() throws LedgerFault, UsageProblem {
    try (LedgerView view = LedgerView.open(request.ledger())) {
      JobSessions sessions = new StoredJobs(view).sessions(request.jobName());
      requireFree();
      JobResults results = JobComputing.of(sessions);
      DisplayUnit unit = request.unit() == null ? sessions.job().displayUnit() : request.unit();
      PrintedSheet sheet =
          BuildSheet.of(
              new SheetFacts(
                  results,
                  sessions.job(),
                  sessions.tables(),
                  new LengthFormat(unit),
                  request.paper(),
                  request.by(),
                  clock.instant(),
                  Version.PROGRAM,
                  SealWords.of(view)));
      save(sheet.pdf());
      return new ReportAnswer(
          request.out().toString(),
          sheet.pages(),
          results.job(),
          results.ledgerHead(),
          unit.symbol(),
          request.paper().name().toLowerCase(Locale.ROOT),
          sheet.cautions(),
          results.attention());
    }
  }

  private void requireFree() throws UsageProblem {
    Path out = request.out();
    if (Files.isDirectory(out)) {
      throw new UsageProblem(out + ": is a folder; name a file in it");
    } else if (Files.exists(out) && isLedger(out)) {
      throw new UsageProblem(out + ": is the ledger itself; name another file");
    } else if (Files.exists(out) && !request.replace()) {
      throw new UsageProblem(
          out + ": is there already; name another file, or say --replace to write over it");
    }
  }

  private boolean isLedger(Path out) throws UsageProblem {
    try {
      return Files.isSameFile(out, request.ledger());
    } catch (IOException e) {
      throw cannotWrite(e);
    }
  }

  private void save(byte[] pdf) throws UsageProblem {
    Path out = request.out().toAbsolutePath();
    Path part = out.resolveSibling("." + out.getFileName() + ".part");
    try {
      Files.write(part, pdf);
      if (request.replace()) {
        Files.move(part, out, StandardCopyOption.REPLACE_EXISTING);
      } else {
        Files.move(part, out);
      }
    } catch (IOException e) {
      throw cannotWrite(forget(part, e));
    }
  }

  private static IOException forget(Path part, IOException first) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException second) {
      first.addSuppressed(second);
    }
    return first;
  }

  private UsageProblem cannotWrite(IOException e) {
    return new UsageProblem(
        request.out()
            + ": cannot be written, "
            + why(e)
            + "; name a file in a folder that is there and may be written to");
  }

  private static String why(IOException e) {
    if (e instanceof NoSuchFileException) {
      return "there is no such folder";
    } else if (e instanceof AccessDeniedException) {
      return "the system does not allow it";
    }
    return e instanceof FileAlreadyExistsException ? "it is there by now" : e.getMessage();
  }
}
