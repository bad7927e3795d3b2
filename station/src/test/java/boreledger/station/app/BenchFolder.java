package boreledger.station.app;

import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;

/**
 * A folder with the files of the small job as a person would have them: job, gauges, captures.
 *
 * @param path the folder
 */
public record BenchFolder(Path path) {
  /** A bore session of the standard job, in order, without temperatures that differ from 20 °C. */
  public static final List<String> BORES =
      List.of("+0.000", "+0.028", "+0.022", "+0.010", "+0.006", "+0.000");

  /** Its top ring's gaps. */
  public static final List<String> GAPS = List.of("0.450", "0.410");

  /** Writes the standard job. */
  public Path job() {
    return job(SmallJob.standard());
  }

  /** Writes a job. */
  public Path job(SmallJob job) {
    return write("small.job.toml", job.text());
  }

  /** Writes a gauge profile. */
  public Path gauge(SmallGauge gauge) {
    return write(gauge.fileName(), gauge.text());
  }

  /** Writes a capture of bores, and its gauge profile beside it. */
  public Path bores(List<String> lines) {
    gauge(SmallGauge.deviation());
    return capture("bores.capture.jsonl", boreHeader("pressed.gauge.toml"), lines);
  }

  /** Writes a capture of the top ring's gaps, and its gauge profile beside it. */
  public Path gaps(List<String> lines) {
    gauge(SmallGauge.size());
    return capture("gaps.capture.jsonl", gapHeader("size.gauge.toml", "top"), lines);
  }

  /** The header of a bore capture. */
  public static String boreHeader(String gauge) {
    return """
        {"format":"boreledger-capture/1","gauge":"%s","measure":"bore",\
        "started":"2031-05-06T08:00:00Z","setting_temp_c":20.0,"block_temp_c":20.0}"""
        .formatted(gauge);
  }

  /** The header of a gap capture. */
  public static String gapHeader(String gauge, String ring) {
    return """
        {"format":"boreledger-capture/1","gauge":"%s","measure":"gap","ring":"%s",\
        "started":"2031-05-06T09:00:00Z","block_temp_c":20.0}"""
        .formatted(gauge, ring);
  }

  /** Writes a capture whose lines arrive ten seconds apart, each with its line feed. */
  public Path capture(String name, String header, List<String> lines) {
    StringBuilder text = new StringBuilder(header).append('\n');
    int t = 0;
    for (String line : lines) {
      t += 10;
      text.append(
          "{\"t\":%d,\"rx\":\"%s\"}\n"
              .formatted(
                  t,
                  HexFormat.of().formatHex((line + "\n").getBytes(StandardCharsets.ISO_8859_1))));
    }
    return write(name, text.toString());
  }

  /** Where a ledger may go; it is not there yet. */
  public Path ledger() {
    return path.resolve("bench.db");
  }

  /** Writes any file. */
  public Path write(String name, String text) {
    try {
      Path file = path.resolve(name);
      Files.createDirectories(file.getParent());
      return Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
