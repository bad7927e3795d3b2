package boreledger.station.cli;

import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.Ledger;
import boreledger.station.table.ContentHash;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;

/** Another process that has a ledger open. */
final class OtherProgram implements AutoCloseable {
  private static final int MOST_ENTRIES = 100_000;

  private final Process process;
  private final BufferedReader said;
  private String last;

  private OtherProgram(Process process) {
    this.process = process;
    this.said = process.inputReader(StandardCharsets.UTF_8);
  }

  /** Holds the file locked against everybody, readers too. */
  static OtherProgram locking(Path ledger) throws IOException {
    OtherProgram other = start("lock", ledger);
    other.nextWord();
    return other;
  }

  /** Adds one entry after the other and says each number when it is durable. */
  static OtherProgram appending(Path ledger) throws IOException {
    return start("append", ledger);
  }

  String nextWord() throws IOException {
    String word = said.readLine();
    if (word == null) {
      throw new AssertionError("the other program ended by itself");
    }
    last = word;
    return word;
  }

  /** Ends it as {@code kill -9} does, and tells the last word that it said. */
  String kill() throws InterruptedException {
    // A handle, unlike its process, leaves open what is still to be read.
    process.toHandle().destroyForcibly();
    process.waitFor();
    return said.lines().reduce(last, (earlier, later) -> later);
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }

  private static OtherProgram start(String what, Path ledger) throws IOException {
    return new OtherProgram(
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                OtherProgram.class.getName(),
                what,
                ledger.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start());
  }

  /** What the other process does: a word and a ledger. */
  public static void main(String[] args) throws Exception {
    Path ledger = Path.of(args[1]);
    if (args[0].equals("lock")) {
      lock(ledger);
    } else {
      append(ledger);
    }
  }

  private static void lock(Path ledger) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + ledger);
        Statement sql = connection.createStatement()) {
      sql.execute("PRAGMA locking_mode = EXCLUSIVE");
      sql.execute("BEGIN EXCLUSIVE");
      System.out.println("locked");
      System.in.read();
    }
  }

  private static void append(Path ledger) throws Exception {
    try (Ledger open = Ledger.open(ledger)) {
      for (int i = 0; i < MOST_ENTRIES; i++) {
        String text = "x = " + i;
        System.out.println(
            open.append(new Document("table", "a.toml", ContentHash.of(text), text)));
      }
    }
  }
}
