package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Text;

/** What a person may ask for by a key while gauging. */
public enum Command {
  /** The last reading of the sitting is taken back, or counts again. */
  TAKE_BACK("take-back", BenchText.COMMAND_TAKE_BACK),
  /** The present position waits until the end. */
  SKIP("skip", BenchText.COMMAND_SKIP),
  /** The gauge is to send a reading. */
  READ("read", BenchText.COMMAND_READ),
  /** The held value is taken anyway. */
  CONFIRM("take", BenchText.COMMAND_CONFIRM),
  /** The held value is left. */
  LEAVE("leave", BenchText.COMMAND_LEAVE);

  private final String id;
  private final Text words;

  Command(String id, Text words) {
    this.id = id;
    this.words = words;
  }

  /** The word by which it is found and remembered. */
  public String id() {
    return id;
  }

  /** What a person calls it. */
  public String words() {
    return words.with();
  }
}
