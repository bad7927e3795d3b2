package boreledger.station.audit;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.job.Ring;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.ImportedChains;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.StoredRow;
import boreledger.station.plan.Plan;
import boreledger.station.plan.Position;
import boreledger.station.table.ContentHash;
import boreledger.station.table.TableFile;
import boreledger.station.table.Tables;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The documents that a ledger keeps. Of each only its entry's number is remembered; the last few
 * jobs and profiles stay read.
 */
final class Shelf {
  private static final int MOST_READ = 16;

  private final Rows rows;
  private final ImportedChains imported;
  private final Map<String, Long> entries = new HashMap<>();
  private final Map<String, GaugeProfile> gauges = new Recent<>(MOST_READ);
  private final Map<List<String>, Job> jobs = new Recent<>(MOST_READ);
  private final Map<List<String>, List<Position>> plans = new Recent<>(MOST_READ);

  Shelf(Rows rows, ImportedChains imported) {
    this.rows = rows;
    this.imported = imported;
  }

  /** Something that a session refers to is not there, or cannot be read; the message says what. */
  static final class Lacking extends Exception {
    private static final long serialVersionUID = 1L;

    Lacking(String what) {
      super(what);
    }
  }

  void keep(long seq, Document document, Remarks remarks) {
    String again = ContentHash.of(document.text());
    if (!again.equals(document.sha256())) {
      remarks.finding(
          seq,
          document.name()
              + " is not the text of its content hash: computed "
              + again
              + ", stored "
              + document.sha256());
    }
    entries.putIfAbsent(document.role() + " " + document.sha256(), seq);
  }

  GaugeProfile gauge(SessionOpened opened) throws Lacking, LedgerFault {
    GaugeProfile gauge = gauges.get(opened.gauge());
    if (gauge == null) {
      Document document = document("gauge", opened.gauge());
      try {
        gauge = GaugeProfiles.parse(document.name(), document.text());
      } catch (FileProblem e) {
        throw new Lacking("its gauge profile cannot be read: " + e.getMessage());
      }
      gauges.put(opened.gauge(), gauge);
    }
    return gauge;
  }

  /** A job by its content hash, with the tables of a session. */
  Job job(String sha256, SessionOpened opened) throws Lacking, LedgerFault {
    List<String> key = new ArrayList<>(opened.tables());
    key.add(sha256);
    Job job = jobs.get(key);
    if (job == null) {
      Tables tables = tables(opened.tables());
      Document document = document("job", sha256);
      try {
        job = new JobFiles(tables).parse(document.name(), document.text());
      } catch (FileProblem e) {
        throw new Lacking("its job cannot be read: " + e.getMessage());
      }
      jobs.put(key, job);
    }
    return job;
  }

  /** The positions of a session by a job; sessions with the same plan share one list. */
  List<Position> plan(String sha256, SessionOpened opened) throws Lacking, LedgerFault {
    List<String> key = List.of(sha256, opened.measure().word(), "" + opened.ring());
    List<Position> plan = plans.get(key);
    if (plan == null) {
      Job job = job(sha256, opened);
      Ring ring = opened.ring() == null ? null : job.ring(opened.ring()).orElse(null);
      if (ring == null && opened.measure() != Measure.BORE) {
        throw new Lacking("its job has no ring named " + opened.ring());
      }
      plan = Plan.of(job, opened.measure(), ring);
      plans.put(key, plan);
    }
    return plan;
  }

  private Tables tables(List<String> hashes) throws Lacking, LedgerFault {
    List<TableFile> files = new ArrayList<>();
    for (String sha256 : hashes) {
      Document document = document("table", sha256);
      files.add(TableFile.kept(document.name(), document.text()));
    }
    try {
      return Tables.of(files);
    } catch (FileProblem e) {
      throw new Lacking("a table of it cannot be read: " + e.getMessage());
    }
  }

  private Document document(String role, String sha256) throws Lacking, LedgerFault {
    Long seq = entries.get(role + " " + sha256);
    if (seq == null) {
      throw new Lacking("no " + role + " of content hash " + sha256 + " before it");
    }
    StoredRow row =
        rows.row(seq)
            .orElseThrow(() -> new Lacking("entry " + seq + ", its " + role + ", is gone"));
    return (Document) imported.read(row);
  }
}
