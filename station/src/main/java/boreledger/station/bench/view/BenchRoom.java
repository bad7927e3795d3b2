package boreledger.station.bench.view;

import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.words.WindowText;

/** The room where gauging is seen. */
public final class BenchRoom {
  /** By which it is gone to. */
  public static final String ID = "bench";

  private BenchRoom() {}

  /** The room of a model. */
  public static Room of(BenchModel model, KeyChoices keys) {
    Desk desk = new Desk(model, keys);
    return new Room(ID, WindowText.ROOM_BENCH.with(), desk, () -> {}, desk::take);
  }
}
