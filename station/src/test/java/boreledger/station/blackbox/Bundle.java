package boreledger.station.blackbox;

import boreledger.station.truth.CaptureText;
import boreledger.station.truth.Engine;
import boreledger.station.truth.JobText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A folder with a job, gauge profiles and captures for one run, and where its ledger would be. */
record Bundle(Path folder) {

  /** A gauge profile for lines of a signed number with a point. */
  static String lineProfile(String reads, String resolutionMm) {
    return """
        format = "boreledger-gauge/1"
        name = "Signed line"
        reads = "%s"
        unit = "mm"
        resolution_mm = %s
        max_error_mm = 0.002

        [line]
        baud = 9600
        data_bits = 8
        parity = "none"
        stop_bits = 1
        dtr = true
        rts = true

        [frame]
        kind = "line"
        ends_with = "\\r\\n"
        max_bytes = 64

        [decode]
        pattern = '^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$'

        [pick]
        rule = "press"
        """
        .formatted(reads, resolutionMm);
  }

  /** Copies samples into the folder. */
  Bundle withSamples(String... names) {
    for (String name : names) {
      write(name, read(Program.sample(name)));
    }
    return this;
  }

  Bundle withJob(Engine engine) {
    write("engine.job.toml", JobText.of(engine, ""));
    return this;
  }

  Bundle withCapture(String name, CaptureText capture) {
    write(name, capture.toString());
    return this;
  }

  /** Changes the first place where the text stands and returns its line number. */
  int edit(String name, String from, String to) {
    String before = read(folder.resolve(name));
    int at = before.indexOf(from);
    if (at < 0) {
      throw new IllegalArgumentException(name + " has no " + from);
    }
    write(name, before.substring(0, at) + to + before.substring(at + from.length()));
    return 1 + (int) before.substring(0, at).chars().filter(c -> c == '\n').count();
  }

  void write(String name, String text) {
    try {
      Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String path(String name) {
    return folder.resolve(name).toString();
  }

  String ledger() {
    return path("bench.ledger");
  }

  /** All names in the folder now. */
  TreeSet<String> names() {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Arguments of a replay with JSON. */
  List<String> replay(String job, List<String> captures) {
    return Stream.concat(
            Stream.of("replay", "--json", "--job", path(job), "--ledger", ledger()),
            captures.stream().flatMap(capture -> Stream.of("--capture", path(capture))))
        .toList();
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
