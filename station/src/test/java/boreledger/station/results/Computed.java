package boreledger.station.results;

import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.job.Job;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The results of some sittings, looked at as the JSON that scripts get.
 *
 * @param results as they were computed
 * @param json as they are answered
 */
record Computed(JobResults results, JsonNode json) {
  /** What a job's sittings mean, the oldest first. */
  static Computed of(SmallJob job, Sitting... sittings) {
    List<StoredSession> sessions = new ArrayList<>();
    Map<String, GaugeProfile> gauges = new HashMap<>();
    Map<Long, Job> jobs = new HashMap<>();
    for (Sitting sitting : sittings) {
      long id = sessions.size() + 2;
      sessions.add(sitting.stored(id));
      jobs.put(id, sitting.job());
      gauges.put(sitting.gauge().source().sha256(), sitting.gauge());
    }
    JobResults results =
        JobComputing.of(
            new JobSessions(
                job.job(),
                SmallJob.tables(),
                sessions,
                List.of(),
                gauges,
                jobs,
                List.of(),
                "00".repeat(32)));
    try {
      return new Computed(results, new ObjectMapper().readTree(AnswerJson.write(results)));
    } catch (JsonProcessingException e) {
      throw new AssertionError(e);
    }
  }

  /** The first cylinder's bore. */
  JsonNode bore() {
    return json.at("/cylinders/0/bore");
  }

  /** A planned position of the first cylinder, thrust before pin, from the deck down. */
  JsonNode position(int index) {
    return bore().path("positions").path(index);
  }

  /** The diameter at a planned position of the first cylinder. */
  double diameterMm(int index) {
    return position(index).path("diameter_mm").asDouble();
  }

  /** The check of a name in the first cylinder; a missing node when there is none. */
  JsonNode check(String name) {
    for (JsonNode check : bore().path("checks")) {
      if (check.path("check").asText().equals(name)) {
        return check;
      }
    }
    return json.path("no such check");
  }

  /** A planned gap depth of the first ring in the first cylinder. */
  JsonNode gap(int index) {
    return json.at("/cylinders/0/rings/0/gaps/" + index);
  }

  /** Every caution, of the job, its cylinders and its rings. */
  List<String> cautions() {
    List<String> all = new ArrayList<>();
    for (JsonNode list : json.findValues("cautions")) {
      list.forEach(caution -> all.add(caution.asText()));
    }
    return all;
  }

  /** Whether some caution holds a piece of text. */
  boolean warnsOf(String piece) {
    return cautions().stream().anyMatch(caution -> caution.contains(piece));
  }
}
