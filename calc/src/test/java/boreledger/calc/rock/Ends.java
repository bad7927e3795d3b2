package boreledger.calc.rock;

import java.util.Random;

/** How a record begins and ends, when the gauge goes into the bore and comes out again. */
enum Ends {
  /** The record begins and ends inside the bore. */
  INSIDE {
    @Override
    double valueMm(double tS, double insideMm, Course course) {
      return insideMm;
    }
  },
  /** In free air the anvils stand out, and then the gauge is in. */
  SUDDEN {
    @Override
    double valueMm(double tS, double insideMm, Course course) {
      return course.depth(tS) > 0 ? insideMm : course.freeMm;
    }
  },
  /** The anvils give way little by little. */
  GRADUAL {
    @Override
    double valueMm(double tS, double insideMm, Course course) {
      double part = Math.min(1, course.depth(tS) / course.rampS);
      return part <= 0 ? course.freeMm : part * insideMm + (1 - part) * course.freeMm;
    }
  },
  /** The anvils are pressed together by the edge before they stand in the bore. */
  SQUEEZED {
    @Override
    double valueMm(double tS, double insideMm, Course course) {
      double part = course.depth(tS) / course.rampS;
      if (part <= 0) {
        return course.freeMm;
      }
      return part < 1 ? insideMm - 0.5 * course.freeMm * Math.sin(Math.PI * part) : insideMm;
    }
  };

  abstract double valueMm(double tS, double insideMm, Course course);

  /** When the gauge is in, and what it shows in free air. */
  static final class Course {
    private final double inS;
    private final double outS;
    private final double rampS;
    private final double freeMm;

    Course(Random random, double durationS) {
      inS = Hand.between(random, 0.2, 0.8);
      outS = durationS - Hand.between(random, 0.2, 0.8);
      rampS = Hand.between(random, 0.15, 0.5);
      freeMm = Hand.between(random, 0.8, 1.8);
    }

    private double depth(double tS) {
      return Math.min(tS - inS, outS - tS);
    }
  }
}
