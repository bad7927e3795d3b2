package boreledger.drivers.fuzz;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Any bytes, cut and timed anyhow, through every kind of frame and decoding: no exception comes
 * out, every byte is accounted for once and in order, and no value is beyond a kilometre.
 */
class GaugeFuzzTest {
  private static final String LINE = "[frame]\nkind='line'\nends_with=\"\\n\"\nmax_bytes=16\n";
  private static final String FIXED = "[frame]\nkind='fixed'\nbytes=6\nstarts_with_hex='02'\n";
  private static final String SILENCE = "[frame]\nkind='silence'\nquiet_ms=20\nmax_bytes=12\n";
  private static final String MODBUS = "[frame]\nkind='modbus-rtu'\n";
  private static final String BITS =
      "negative={at=0,mask=0x80}\ninch={at=-1,mask=1}\n"
          + "[flags]\nhold={at=1,mask=1}\nout_of_range={at=-2,mask=2}\nlow_battery={at=0,mask=4}\n"
          + "[[check]]\nkind='xor8'\nfrom=0\nto=-2\nat=-2\nas='hex-text'\n";
  private static final String REGISTERS =
      "[decode]\nkind='modbus-registers'\nslave=1\nfunction=3\nregister=0\nregisters=2\n";

  private static final Map<String, GaugeProfile> PROFILES = new HashMap<>();

  private static String inBytes(String kind) {
    return "[decode]\nkind='" + kind + "'\nat=1\nbytes=4\nbyte_order='little'\n";
  }

  /** Profiles are the same every time; reading them again would take most of it. */
  private static GaugeProfile profile(String tables) throws FileProblem {
    GaugeProfile known = PROFILES.get(tables);
    if (known != null) {
      return known;
    }
    String head =
        "format='boreledger-gauge/1'\nname='g'\nreads='size'\nunit='mm'\nresolution_mm=0.001\n"
            + "max_error_mm=0.002\n";
    GaugeProfile profile = GaugeProfiles.parse("g", head + tables);
    PROFILES.put(tables, profile);
    return profile;
  }

  /** Plays the data as a line would bring it: runs of bytes, pauses, an end. */
  private static void play(FuzzedDataProvider data, String... tables) throws FileProblem {
    String pick = data.pickValue(new String[] {"press", "settle", "rock"});
    GaugeProfile profile = profile(data.pickValue(tables) + "[pick]\nrule='" + pick + "'\n");
    Gauge gauge = new Gauge(profile, null);
    List<GaugeEvent> events = new ArrayList<>();
    Bytes fed = Bytes.EMPTY;
    double tS = 0;
    while (data.remainingBytes() > 0) {
      tS += data.consumeInt(0, 40) / 1000.0;
      Bytes next = Bytes.of(data.consumeBytes(data.consumeInt(0, 24)));
      fed = fed.plus(next);
      events.addAll(
          gauge.feed(next.size() == 0 ? new LineEvent.Quiet(tS) : new LineEvent.Chunk(tS, next)));
    }
    events.addAll(gauge.feed(fed.size() % 2 == 0 ? new LineEvent.End(tS) : new LineEvent.Cut(tS)));
    assertAccounted(fed, events);
  }

  private static void assertAccounted(Bytes fed, List<GaugeEvent> events) {
    Bytes seen = Bytes.EMPTY;
    for (GaugeEvent event : events) {
      if (event instanceof GaugeEvent.Live live) {
        seen = seen.plus(live.sample().raw());
        if (!(Math.abs(live.sample().valueMm()) <= 1e6)) {
          throw new AssertionError(live.toString());
        }
      } else if (event instanceof GaugeEvent.Bad bad) {
        seen = seen.plus(bad.rejected().raw());
      }
    }
    if (!fed.equals(seen)) {
      throw new AssertionError("fed " + fed + ", accounted for " + seen);
    }
  }

  @FuzzTest(maxDuration = "5m")
  void lines(FuzzedDataProvider data) throws FileProblem {
    play(
        data,
        LINE + "[decode]\npattern='(?<value>[+-]?\\d*[.,]?\\d+(?:E[+-]?\\d+)?) ?(?<unit>[a-z]*)'\n",
        LINE
            + "[decode]\npattern='^(?<value>.*?)(?<hold>H)?(?<low_battery>B)?(?<out_of_range>O)?$'\n",
        LINE + "[decode]\nkind='ieee-488.2'\nscale=1e-3\n");
  }

  @FuzzTest(maxDuration = "5m")
  void fixedFrames(FuzzedDataProvider data) throws FileProblem {
    play(
        data,
        FIXED + inBytes("integer") + "scale=0.001\n",
        FIXED + inBytes("float"),
        FIXED + inBytes("packed-digits") + "decimal_position={at=0,mask=0x70}\n",
        FIXED + inBytes("integer") + "scale=-1e300\n" + BITS);
  }

  @FuzzTest(maxDuration = "5m")
  void silence(FuzzedDataProvider data) throws FileProblem {
    play(
        data,
        SILENCE + inBytes("integer") + "scale=0.001\n",
        SILENCE + inBytes("float") + BITS,
        SILENCE + inBytes("packed-digits") + "scale=1e-300\nnibble_order='low-first'\n" + BITS,
        SILENCE + "[decode]\nkind='ieee-488.2'\n");
  }

  @FuzzTest(maxDuration = "5m")
  void modbus(FuzzedDataProvider data) throws FileProblem {
    play(
        data,
        MODBUS + REGISTERS + "type='integer'\nscale=0.001\n",
        MODBUS + REGISTERS + "type='float'\nword_order='little'\n" + BITS,
        MODBUS + REGISTERS + "type='packed-digits'\nscale=1\n",
        MODBUS + inBytes("integer") + "scale=1\n");
  }
}
