package boreledger.station.bench.gaps;

import boreledger.station.bench.House;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.gaps.Supposing.Part;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.memory.Memory;

/** States of the room that are drawn and measured. */
public final class GapsStates {
  private GapsStates() {}

  /** Two passes with the file noted, a third refused, and a hotter engine supposed. */
  public static Room filedAndSupposed(House house) {
    Findings findings = new Findings(house.around());
    GapsModel model = new GapsModel(findings, house.around(), new Memory(null), house::filing);
    findings.want();
    model.cylinder().set(2);
    for (String gap : new String[] {"0.42 mm", "0.428 mm", "41 mm"}) {
      model.filing().who().set("A. Turner");
      model.filing().turns().set("10");
      model.filing().gapAfter().set(gap);
      model.filing().addPass();
    }
    model.supposing().typed(Part.RING).set("420");
    model.supposing().typed(Part.WALL_TOP).set("hot");
    model.supposing().suppose();
    model.supposing().typed(Part.WALL_TOP).set("");
    model.supposing().suppose();
    model.supposing().typed(Part.WALL_BOTTOM).set("none");
    model.supposing().suppose();
    return GapsRoom.of(model);
  }
}
