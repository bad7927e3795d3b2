package boreledger.station.bench.findings;

import boreledger.station.app.Workshop;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobSessions;
import boreledger.station.results.WhatIf;
import boreledger.station.wording.LengthFormat;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * The latest finding, asked for in the background whenever readings came and some room that shows
 * it is open. It belongs to the screen's thread.
 */
public final class Findings {
  private final Surroundings around;
  private final ReadOnlyObjectWrapper<Finding> latest = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper("");
  private final ObjectProperty<WhatIf> whatIf = new SimpleObjectProperty<>(WhatIf.AS_IT_IS);
  private boolean wanted;

  /** Nothing is found yet. */
  public Findings(Surroundings around) {
    this.around = around;
    around.results().subscribe(results -> readingsCame());
    whatIf.subscribe(changed -> readingsCame());
  }

  /** Tells that a room is open that shows them. */
  public void want() {
    wanted = true;
    ask();
  }

  /** The latest; null as long as nothing was gauged. */
  public ReadOnlyObjectProperty<Finding> latest() {
    return latest.getReadOnlyProperty();
  }

  /** Why nothing could be found, in words; empty when it could. */
  public ReadOnlyStringProperty fault() {
    return fault.getReadOnlyProperty();
  }

  /** What is supposed beyond what the job says. */
  public ObjectProperty<WhatIf> whatIf() {
    return whatIf;
  }

  /** How lengths are written now. */
  public LengthFormat lengths() {
    DisplayUnit unit = around.appearance().unit().get();
    if (unit != null || latest.get() == null) {
      return new LengthFormat(unit == null ? DisplayUnit.MM : unit);
    }
    return new LengthFormat(latest.get().job().displayUnit());
  }

  private void readingsCame() {
    if (wanted) {
      ask();
    }
  }

  private void ask() {
    Workshop workshop = around.workshop().get();
    WhatIf supposed = whatIf.get();
    around.background().execute(() -> find(workshop, supposed));
  }

  private void find(Workshop workshop, WhatIf supposed) {
    try {
      Optional<JobSessions> sessions = workshop.latestSessions();
      Finding found = sessions.map(each -> Finding.of(each, supposed)).orElse(null);
      around.screen().execute(() -> show(found, ""));
    } catch (LedgerFault e) {
      around.screen().execute(() -> show(null, e.getMessage()));
    }
  }

  private void show(Finding found, String why) {
    latest.set(found);
    fault.set(why);
  }
}
