package boreledger.calc.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import org.junit.jupiter.api.Test;

class ComponentTest {
  @Test
  void aNegativeUncertaintyIsRefused() {
    ImpossibleInput refused =
        assertThrows(ImpossibleInput.class, () -> Component.typeB("zero", -0.001));
    assertEquals("standard uncertainty of zero -0.001 mm is negative", refused.getMessage());
  }

  @Test
  void degreesOfFreedomOfNothingAreRefused() {
    ImpossibleInput refused =
        assertThrows(ImpossibleInput.class, () -> new Component("zero", 0.001, 0));
    assertEquals("degrees of freedom of zero 0.0 are not above zero", refused.getMessage());
    assertThrows(ImpossibleInput.class, () -> new Component("zero", 0.001, Double.NaN));
  }

  @Test
  void boundsTurnIntoStandardUncertaintiesAsInGum43() {
    // JCGM 100:2008, 4.3.7 and F.2.2.1: half width over root 3, and 0.29 of a step.
    assertEquals(0.577, TypeB.rectangular(1), 0.0005);
    assertEquals(0.29, TypeB.resolution(1), 0.005);
    assertEquals(TypeB.rectangular(0.5), TypeB.resolution(1), 1e-15);
    // H.1: 75 nm with k = 3.
    assertEquals(25, TypeB.expanded(75, 3), 1e-12);
  }
}
