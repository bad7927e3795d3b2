package boreledger.drivers.pick;

import boreledger.calc.rock.RockEstimate;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import java.util.List;
import org.junit.jupiter.api.Nested;

class PickRuleContractTest {
  @Nested
  class Press extends PickRuleContract {
    @Override
    PickRule newRule() {
      return new PressRule(new PickSpec.Press(3));
    }

    @Override
    List<Sample> stream() {
      return List.of(Samples.at(0, 0.5), Samples.at(0.1, 0.5), Samples.at(9, 0.6));
    }
  }

  @Nested
  class Settle extends PickRuleContract {
    @Override
    PickRule newRule() {
      return new SettleRule(new PickSpec.Settle(0.8, 0.003, 0.02), null);
    }

    @Override
    List<Sample> stream() {
      RockingHand hand = new RockingHand(1, 96, 10).restAt(0.5, 2).goTo(0.9).restAt(0.9, 2);
      return hand.silence(5).restAt(0.9, 2).samples();
    }
  }

  @Nested
  class Rock extends PickRuleContract {
    @Override
    PickRule newRule() {
      PickSpec.Rock spec = new PickSpec.Rock(2.0, 1.5, 3);
      RockPick pick =
          new RockPick(
              spec,
              0.001,
              (samples, resolutionMm, minRocks) ->
                  new RockEstimate.Found(samples.get(9).tS(), samples.get(9).valueMm(), 0.001, 3));
      return new RockRule(spec, null, pick, 0.001);
    }

    @Override
    List<Sample> stream() {
      RockingHand hand = new RockingHand(1, 96, 20).restAt(1.2, 3).rock(0.01, 3, 2, 4);
      hand.goTo(1.2).restAt(1.2, 3).goTo(0.1).rock(0.02, 3, 2, 4).goTo(3).silence(2);
      return hand.rock(0.03, 3, 2, 4).wild(-7).rock(0.03, 3, 2, 4).samples();
    }
  }
}
