package boreledger.drivers.learn;

import boreledger.drivers.learn.InventedGauge.Chunking;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;

/** Invents binary gauges from a seed, so that no reading is learned from the corpus alone. */
final class RandomGauge {
  private static final List<String> STEPS =
      List.of("0.001", "0.0001", "0.0005", "0.002", "0.00127", "0.00390625", "0.00001", "0.0254");
  private static final int[] MARKS = {0xaa, 0x55, 0x7e, 0x02, 0xf5, 0x3a, 0};

  private final Random random;
  private final boolean packed;
  private final boolean floating;
  private final boolean big;
  private final int bytes;
  private final int mark;
  private final int before;
  private final int behind;
  private final int signBit;
  private final int inchBit;
  private final int check;
  private final boolean twosComplement;

  private RandomGauge(long seed) {
    random = new Random(seed);
    int coding = random.nextInt(4);
    floating = coding == 0;
    packed = coding == 1;
    twosComplement = !packed && random.nextBoolean();
    big = random.nextBoolean();
    bytes = packed || random.nextBoolean() ? 4 : 3;
    mark = MARKS[random.nextInt(MARKS.length)];
    before = random.nextInt(4);
    behind = random.nextInt(3);
    signBit = 1 << random.nextInt(4);
    inchBit = random.nextInt(3) == 0 ? 0x10 << random.nextInt(4) : 0;
    check = random.nextInt(5);
  }

  /** The gauge of a seed. */
  static InventedGauge of(long seed) {
    RandomGauge layout = new RandomGauge(seed);
    String step = STEPS.get(layout.random.nextInt(layout.packed ? 4 : STEPS.size()));
    String name = "seed " + seed + layout;
    Chunking chunks = Chunking.values()[layout.random.nextInt(3)];
    InventedGauge gauge = InventedGauge.of(name, step, layout::frame).in(chunks);
    boolean decimal = new BigDecimal(step).unscaledValue().intValue() == 1;
    return layout.inchBit != 0 && decimal ? gauge.withInch("0.0001") : gauge;
  }

  private byte[] frame(Reading r) {
    Layout frame = mark == 0 ? new Layout() : new Layout().hex(mark);
    int status = (r.isNegative() && needsSign() ? signBit : 0) | (r.isInch() ? inchBit : 0);
    frame.hex(status);
    if (before > 1) {
      frame.hex(before == 2 ? r.sequence() & 0xff : 0x40);
    }
    number(frame, r);
    if (behind == 1) {
      frame.hex(r.noise());
    }
    return switch (check) {
      case 0 -> frame.check(0, Layout::sum).frame();
      case 1 -> frame.check(1, Layout::xor).frame();
      case 2 -> frame.littleCrc(0, Crc.MODBUS).frame();
      case 3 -> frame.hex(0x0d).frame();
      default -> frame.frame();
    };
  }

  private boolean needsSign() {
    return !floating && !twosComplement;
  }

  private void number(Layout frame, Reading r) {
    if (floating) {
      float number = r.number().floatValue();
      if (big) {
        frame.bigFloat(number);
      } else {
        frame.littleFloat(number);
      }
      return;
    }
    long size = packed ? Layout.packed(r.magnitude()) : r.magnitude();
    long sent = needsSign() ? size : r.counts();
    if (big) {
      frame.big(sent, bytes);
    } else {
      frame.little(sent, bytes);
    }
  }

  @Override
  public String toString() {
    return String.format(
        " float %b, packed %b, two's complement %b, big %b, bytes %d, mark %02x, before %d,"
            + " behind %d, sign %02x, inch %02x, check %d",
        floating,
        packed,
        twosComplement,
        big,
        bytes,
        mark,
        before,
        behind,
        signBit,
        inchBit,
        check);
  }
}
