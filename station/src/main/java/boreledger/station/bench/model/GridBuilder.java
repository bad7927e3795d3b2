package boreledger.station.bench.model;

import boreledger.station.bench.model.Grid.Cell;
import boreledger.station.bench.model.Grid.Row;
import boreledger.station.bench.model.Grid.State;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Lengths;
import boreledger.station.plan.Position;
import java.util.List;
import java.util.Optional;

/** Lays out the positions of the cylinder being gauged, with what was read there. */
final class GridBuilder {
  private final Sitting sitting;
  private final int cylinder;

  GridBuilder(Sitting sitting) {
    this.sitting = sitting;
    this.cylinder = sitting.shownCylinder();
  }

  Grid grid() {
    return new Grid(title(), columns(), sitting.depthsMm().stream().map(this::row).toList());
  }

  private String title() {
    String number = Integer.toString(cylinder);
    String unit = sitting.lengths().symbol();
    return switch (sitting.measure()) {
      case BORE -> BenchText.GRID_BORE.with(number, unit);
      case GAP -> BenchText.GRID_GAP.with(number, unit, sitting.start().ring().name());
      case RING_DEPTH ->
          BenchText.GRID_RING_DEPTH.with(number, unit, sitting.start().ring().name());
    };
  }

  private List<String> columns() {
    return switch (sitting.measure()) {
      case BORE -> sitting.job().plan().axes();
      case GAP -> List.of(BenchText.GRID_GAP_COLUMN.with());
      case RING_DEPTH ->
          sitting.job().plan().clockDeg().stream()
              .map(deg -> BenchText.GRID_CLOCK_COLUMN.with(Lengths.plain(deg)))
              .toList();
    };
  }

  private Row row(double depthMm) {
    List<Cell> cells =
        sitting.ofCylinder(cylinder).stream()
            .filter(each -> Sitting.depthMm(each).equals(Optional.of(depthMm)))
            .map(this::cell)
            .toList();
    return new Row(sitting.lengths().depth(depthMm), cells);
  }

  private Cell cell(Position position) {
    String place = Place.brief(sitting.lengths(), position);
    if (sitting.next().equals(Optional.of(position))) {
      String now = BenchText.GRID_NOW.with();
      return new Cell(position, State.NOW, now, BenchText.GRID_CELL.with(place, now));
    }
    if (!sitting.has(position)) {
      return new Cell(position, State.OPEN, "", BenchText.GRID_CELL_OPEN.with(place));
    }
    String words =
        valueMm(position).map(sitting.lengths()::number).orElseGet(BenchText.GRID_TAKEN::with);
    return new Cell(position, State.TAKEN, words, BenchText.GRID_CELL.with(place, words));
  }

  /** The computed value; a ring's depth is what the gauge read. */
  private Optional<Double> valueMm(Position position) {
    boolean isComputed = position instanceof Position.Bore || position instanceof Position.Gap;
    if (isComputed && sitting.results() != null) {
      return new Computed(sitting.results()).valueMm(position);
    } else if (isComputed) {
      return Optional.empty();
    }
    return Optional.ofNullable(sitting.taken().get(position));
  }
}
