package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobComputing;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobSessions;
import boreledger.station.session.StoredSession;
import boreledger.station.table.TableFile;
import boreledger.station.table.Tables;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds a job's sessions in a ledger, with the files they depend on. */
public final class StoredJobs {
  private static final String NO_SESSION = "no session in this ledger yet; gauge something first";

  private final LedgerView view;

  /** Looks into a ledger. */
  public StoredJobs(LedgerView view) {
    this.view = view;
  }

  /** The names of the jobs that were gauged, the first gauged first. */
  public List<String> names() throws LedgerFault {
    return view.sessions().stream().map(StoredJobs::jobName).distinct().toList();
  }

  /**
   * The results of one job.
   *
   * @param jobName the job; null for the only one
   * @throws UsageProblem if the ledger has no such job, or several and none was named
   */
  public JobResults results(String jobName) throws LedgerFault, UsageProblem {
    return JobComputing.of(sessions(jobName));
  }

  /**
   * What the results of one job are computed from.
   *
   * @param jobName the job; null for the only one
   * @throws UsageProblem if the ledger has no such job, or several and none was named
   */
  public JobSessions sessions(String jobName) throws LedgerFault, UsageProblem {
    List<String> names = names();
    if (names.isEmpty()) {
      throw new UsageProblem(NO_SESSION);
    }
    String name = jobName == null ? theOnly(names) : jobName;
    if (!names.contains(name)) {
      throw new UsageProblem("no job named " + name + " in this ledger, it has " + list(names));
    }
    return sessionsOf(name);
  }

  /**
   * The results of the job that was gauged last.
   *
   * @throws UsageProblem if the ledger has no session yet
   */
  public JobResults latestResults() throws LedgerFault, UsageProblem {
    return JobComputing.of(latestSessions());
  }

  /**
   * What the results of the job that was gauged last are computed from.
   *
   * @throws UsageProblem if the ledger has no session yet
   */
  public JobSessions latestSessions() throws LedgerFault, UsageProblem {
    List<Entry> openings = view.sessions();
    if (openings.isEmpty()) {
      throw new UsageProblem(NO_SESSION);
    }
    return sessionsOf(jobName(openings.get(openings.size() - 1)));
  }

  /** The results of some sessions, all of one job. */
  public JobResults results(List<Long> sessions) throws LedgerFault {
    return JobComputing.of(sessionsOf(StoredSession.some(view, sessions::contains)));
  }

  /**
   * One session with the files it depends on.
   *
   * @throws UsageProblem if the ledger has no such session
   */
  public JobSessions session(long number) throws LedgerFault, UsageProblem {
    List<StoredSession> found = StoredSession.some(view, id -> id == number);
    if (found.isEmpty()) {
      throw new UsageProblem("no session " + number + " in this ledger");
    }
    return sessionsOf(found);
  }

  /** The sessions of one job. Those of others are not read, so that a long ledger opens soon. */
  private JobSessions sessionsOf(String jobName) throws LedgerFault {
    Set<Long> ofTheJob =
        view.sessions().stream()
            .filter(opening -> jobName(opening).equals(jobName))
            .map(Entry::seq)
            .collect(Collectors.toSet());
    return sessionsOf(StoredSession.some(view, ofTheJob::contains));
  }

  /**
   * The job that a session was opened with.
   *
   * @throws LedgerFault if the ledger lacks it, or it cannot be read
   */
  public Job job(SessionOpened opened) throws LedgerFault {
    return job(opened.job(), tables(opened.tables()));
  }

  private JobSessions sessionsOf(List<StoredSession> sessions) throws LedgerFault {
    StoredSession latest = sessions.get(sessions.size() - 1);
    Map<String, GaugeProfile> gauges = new HashMap<>();
    Map<String, Job> jobs = new HashMap<>();
    for (StoredSession session : sessions) {
      String sha256 = session.opened().gauge();
      gauges.put(sha256, gauge(sha256));
      String jobHash = session.opened().job();
      jobs.put(jobHash, job(jobHash, tables(session.opened().tables())));
    }
    Tables tables = tables(latest.opened().tables());
    Job job = jobs.get(latest.opened().job());
    return new JobSessions(job, tables, sessions, gauges, jobs, view.headHash().toHex());
  }

  private Tables tables(List<String> hashes) throws LedgerFault {
    List<TableFile> files = new ArrayList<>();
    for (String sha256 : hashes) {
      Document document = document("table", sha256);
      files.add(TableFile.kept(document.name(), document.text()));
    }
    try {
      return Tables.of(files);
    } catch (FileProblem e) {
      throw new LedgerFault("a table kept in the ledger cannot be read: " + e.getMessage(), e);
    }
  }

  private Job job(String sha256, Tables tables) throws LedgerFault {
    Document document = document("job", sha256);
    try {
      return new JobFiles(tables).parse(document.name(), document.text());
    } catch (FileProblem e) {
      throw new LedgerFault("the job kept in the ledger cannot be read: " + e.getMessage(), e);
    }
  }

  /**
   * A gauge profile by its content hash.
   *
   * @throws LedgerFault if the ledger lacks it, or it cannot be read
   */
  public GaugeProfile gauge(String sha256) throws LedgerFault {
    Document document = document("gauge", sha256);
    try {
      return GaugeProfiles.parse(document.name(), document.text());
    } catch (FileProblem e) {
      throw new LedgerFault(
          "the gauge profile kept in the ledger cannot be read: " + e.getMessage(), e);
    }
  }

  private Document document(String role, String sha256) throws LedgerFault {
    return view.document(sha256)
        .orElseThrow(() -> new LedgerFault("the ledger lacks its " + role + " " + sha256));
  }

  private static String jobName(Entry opening) {
    return ((SessionOpened) opening.body()).jobName();
  }

  private static String theOnly(List<String> names) throws UsageProblem {
    if (names.size() > 1) {
      throw new UsageProblem("several jobs in this ledger, name one with --job: " + list(names));
    }
    return names.get(0);
  }

  private static String list(List<String> names) {
    return names.stream().map(name -> '"' + name + '"').collect(Collectors.joining(", "));
  }
}
