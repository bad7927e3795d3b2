package boreledger.station.bench.gaps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.memory.Memory;
import boreledger.station.job.DisplayUnit;
import boreledger.station.wording.LengthFormat;
import org.junit.jupiter.api.Test;

/** Feeler leaves in the unit that is shown; an inch is 25.4 mm exactly. */
class FeelersTest {
  private static final LengthFormat MM = new LengthFormat(DisplayUnit.MM);
  private static final LengthFormat IN = new LengthFormat(DisplayUnit.IN);

  private final Memory memory = new Memory(null);
  private final Feelers feelers = new Feelers(memory);

  @Test
  void millimetreLeavesMakeAGap() {
    feelers.leaves().set("0,05 0,10 0,40");
    feelers.want(0.45, MM);

    assertEquals("0.05 + 0.40 = 0.450 mm, off by 0.000", first());
  }

  @Test
  void inchLeavesAreTypedAndShownInInches() {
    feelers.want(0.4572, IN);
    feelers.leaves().set("0.002 0.008 0.010");

    assertEquals("0.008 + 0.010 = 0.0180 in, off by 0.0000", first());
  }

  @Test
  void leavesThatSayTheirUnitAreInIt() {
    feelers.want(0.4572, MM);
    feelers.leaves().set("0.002 0.008 0.010 in");

    assertTrue(first().startsWith("0.2032 + 0.254 = 0.457 mm"), first());
  }

  @Test
  void theLeavesFollowTheUnitAndComeBackAsTyped() {
    feelers.want(0.4572, IN);
    feelers.leaves().set("0.0015 0.008 .010");

    feelers.want(0.4572, MM);
    assertEquals("0.0381 0.2032 0.254", feelers.leaves().get());
    assertTrue(first().startsWith("0.2032 + 0.254 = 0.457 mm"), first());

    feelers.want(0.4572, IN);
    assertEquals("0.0015 0.008 .010", feelers.leaves().get());
    assertTrue(first().startsWith("0.008 + 0.010 = 0.0180 in"), first());
  }

  @Test
  void inchLeavesAreRememberedAsInches() {
    feelers.want(0.4572, IN);
    feelers.leaves().set("0.008 0.010");

    Feelers again = new Feelers(memory);
    again.want(0.4572, IN);

    assertEquals("0.008 0.010", again.leaves().get());
  }

  @Test
  void whatIsNoLeafIsToldInTheUnitThatIsShown() {
    feelers.want(0.4572, IN);
    feelers.leaves().set("thin");
    assertTrue(first().contains("inches"), first());

    feelers.want(0.4572, MM);
    assertEquals("thin", feelers.leaves().get());
    assertTrue(first().contains("millimetres"), first());
  }

  private String first() {
    return feelers.stacks().get().lines().findFirst().orElse("");
  }
}
