package boreledger.station.bench.model;

import boreledger.station.bench.ScriptedRun;
import boreledger.station.bench.tone.Tones;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A bench without a screen, watching a scripted run on a real ledger. */
abstract class BenchFixture {
  @TempDir Path folder;

  final List<String> heard = new ArrayList<>();
  final List<String> said = new ArrayList<>();
  ScriptedRun run;
  BenchModel model;
  double nowS = 100;

  @BeforeEach
  void openTheBench() throws LedgerFault {
    run = new ScriptedRun(folder);
    model =
        new BenchModel(
            new BenchServices(run, run, new HeardTones(), said::add),
            Runnable::run,
            Runnable::run,
            () -> nowS);
    run.watch(model::accept);
  }

  @AfterEach
  void closeTheLedger() throws LedgerFault {
    run.close();
  }

  Shown shown() {
    return model.shown();
  }

  Saying saying() {
    return shown().saying().get();
  }

  private final class HeardTones implements Tones {
    @Override
    public void taken() {
      heard.add("taken");
    }

    @Override
    public void takenBack() {
      heard.add("taken back");
    }

    @Override
    public void lookAtMe() {
      heard.add("look at me");
    }
  }
}
