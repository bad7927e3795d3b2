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
import boreledger.station.results.JobSessions.Earlier;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.Amendment;
import boreledger.station.table.TableFile;
import boreledger.station.table.Tables;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Finds a job's sessions in a ledger, with the files they depend on. */
public final class StoredJobs {
  private static final String NO_SESSION = "no session in this ledger yet; gauge something first";

  private final LedgerView view;
  private List<Entry> openings;

  /** Looks into a ledger as it is at the first question. */
  public StoredJobs(LedgerView view) {
    this.view = view;
  }

  /** The names of the jobs that were gauged, the first gauged first. */
  public List<String> names() throws LedgerFault {
    return openings().stream().map(StoredJobs::jobName).distinct().toList();
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
    return JobComputing.of(latestSessions().orElseThrow(() -> new UsageProblem(NO_SESSION)));
  }

  /** What the results of the job that was gauged last are computed from; empty without any. */
  public Optional<JobSessions> latestSessions() throws LedgerFault {
    List<Entry> all = openings();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(sessionsOf(jobName(all.get(all.size() - 1))));
  }

  /** The results of some sessions, all of one job. */
  public JobResults results(List<Long> sessions) throws LedgerFault {
    return JobComputing.of(sessionsOf(opening -> sessions.contains(opening.seq())));
  }

  /**
   * One session with the files it depends on.
   *
   * @throws UsageProblem if the ledger has no such session
   */
  public JobSessions session(long number) throws LedgerFault, UsageProblem {
    if (openings().stream().noneMatch(opening -> opening.seq() == number)) {
      throw new UsageProblem("no session " + number + " in this ledger");
    }
    return sessionsOf(opening -> opening.seq() == number);
  }

  /**
   * The job that a session was opened with.
   *
   * @throws LedgerFault if the ledger lacks it, or it cannot be read
   */
  public Job job(SessionOpened opened) throws LedgerFault {
    return job(opened.job(), opened);
  }

  /**
   * A job that takes the place of the one that a session was opened with.
   *
   * @param sha256 its content hash
   * @throws LedgerFault if the ledger lacks it, or it cannot be read
   */
  public Job job(String sha256, SessionOpened opened) throws LedgerFault {
    return job(sha256, tables(opened.tables()));
  }

  /**
   * The tables that a session was opened with.
   *
   * @throws LedgerFault if the ledger lacks them, or they cannot be read
   */
  Tables tablesOf(SessionOpened opened) throws LedgerFault {
    return tables(opened.tables());
  }

  private List<Entry> openings() throws LedgerFault {
    if (openings == null) {
      openings = view.sessions();
    }
    return openings;
  }

  private JobSessions sessionsOf(String jobName) throws LedgerFault {
    return sessionsOf(opening -> jobName(opening).equals(jobName));
  }

  /**
   * Some sessions of one job. Only those that count are read, so that a long ledger opens as soon
   * as a short one.
   */
  private JobSessions sessionsOf(Predicate<Entry> wanted) throws LedgerFault {
    JobHistory history = new JobHistory(view, openings().stream().filter(wanted).toList());
    List<StoredSession> sessions = history.counting();
    StoredSession latest = saidLast(sessions);
    Map<String, GaugeProfile> gauges = new HashMap<>();
    Map<Long, Job> jobs = new HashMap<>();
    Map<List<String>, Job> read = new HashMap<>();
    for (StoredSession session : sessions) {
      String sha256 = session.opened().gauge();
      gauges.put(sha256, gauge(sha256));
      jobs.put(session.id(), job(session.job(), session.opened(), read));
    }
    List<Earlier> earlier = new ArrayList<>();
    for (Entry opening : history.earlier()) {
      SessionOpened opened = (SessionOpened) opening.body();
      earlier.add(new Earlier(opening.seq(), opened, job(history.job(opening), opened, read)));
    }
    return new JobSessions(
        jobs.get(latest.id()),
        tables(latest.opened().tables()),
        sessions,
        earlier,
        gauges,
        jobs,
        history.filed(),
        view.headHash().toHex());
  }

  /** The session whose job holds for all: the latest one, or one that was amended after it. */
  private static StoredSession saidLast(List<StoredSession> sessions) {
    StoredSession last = sessions.get(sessions.size() - 1);
    long said = last.id();
    for (StoredSession session : sessions) {
      for (Amendment amendment : session.amendments()) {
        if (amendment.amended().job() != null && amendment.seq() > said) {
          said = amendment.seq();
          last = session;
        }
      }
    }
    return last;
  }

  /** Each job is read once, however many sessions it has. */
  private Job job(String sha256, SessionOpened opened, Map<List<String>, Job> read)
      throws LedgerFault {
    List<String> key = new ArrayList<>(opened.tables());
    key.add(sha256);
    Job job = read.get(key);
    if (job == null) {
      job = job(sha256, opened);
      read.put(key, job);
    }
    return job;
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
