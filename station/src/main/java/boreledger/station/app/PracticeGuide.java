package boreledger.station.app;

import boreledger.drivers.practice.Practising;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.plan.Position;
import java.util.function.Consumer;

/** Tells the practising hand where to gauge: wherever the run waits for a reading. */
final class PracticeGuide implements Consumer<GaugingEvent> {
  private final PracticeEngine engine;
  private final Practising hand;

  PracticeGuide(PracticeEngine engine, Practising hand) {
    this.engine = engine;
    this.hand = hand;
  }

  @Override
  public void accept(GaugingEvent event) {
    if (event instanceof GaugingEvent.Began began) {
      guide(began.progress());
    } else if (event instanceof GaugingEvent.Said said) {
      guide(said.progress());
    }
  }

  private void guide(Progress progress) {
    Position next = progress.next();
    if (next != null) {
      hand.gauge(engine.at(next));
    }
  }
}
