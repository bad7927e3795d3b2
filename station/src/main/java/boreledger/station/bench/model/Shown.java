package boreledger.station.bench.model;

import boreledger.station.bench.words.Lengths;
import boreledger.station.job.DisplayUnit;
import boreledger.station.results.JobResults;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What is to be seen at the bench. Each property holds an immutable record. */
public final class Shown {
  final ReadOnlyObjectWrapper<Heading> heading = new ReadOnlyObjectWrapper<>(Heading.none());
  final ReadOnlyObjectWrapper<Place> place = new ReadOnlyObjectWrapper<>(Place.none());
  final ReadOnlyObjectWrapper<BlockPicture> block =
      new ReadOnlyObjectWrapper<>(BlockPicture.none());
  final ReadOnlyObjectWrapper<SectionPicture> section =
      new ReadOnlyObjectWrapper<>(SectionPicture.none());
  final ReadOnlyObjectWrapper<LiveValue> live =
      new ReadOnlyObjectWrapper<>(LiveValue.none(new Lengths(DisplayUnit.MM)));
  final ReadOnlyObjectWrapper<Trace> trace = new ReadOnlyObjectWrapper<>();
  final ReadOnlyObjectWrapper<Grid> grid = new ReadOnlyObjectWrapper<>(Grid.none());
  final ReadOnlyObjectWrapper<PlanProgress> progress =
      new ReadOnlyObjectWrapper<>(PlanProgress.none());
  final ReadOnlyObjectWrapper<LineHealth> line = new ReadOnlyObjectWrapper<>(LineHealth.none());
  final ReadOnlyObjectWrapper<Saying> saying = new ReadOnlyObjectWrapper<>(Saying.none());
  final ReadOnlyObjectWrapper<Notice> notice = new ReadOnlyObjectWrapper<>();
  final ReadOnlyObjectWrapper<List<Beside>> besides = new ReadOnlyObjectWrapper<>(List.of());
  final ReadOnlyObjectWrapper<Question> question = new ReadOnlyObjectWrapper<>();
  final ReadOnlyObjectWrapper<Closing> closing = new ReadOnlyObjectWrapper<>();
  final ReadOnlyObjectWrapper<JobResults> results = new ReadOnlyObjectWrapper<>();

  Shown() {}

  /** What stands over the bench. */
  public ReadOnlyObjectProperty<Heading> heading() {
    return heading.getReadOnlyProperty();
  }

  /** The position to gauge now. */
  public ReadOnlyObjectProperty<Place> place() {
    return place.getReadOnlyProperty();
  }

  /** The block from above. */
  public ReadOnlyObjectProperty<BlockPicture> block() {
    return block.getReadOnlyProperty();
  }

  /** The cylinder from the side. */
  public ReadOnlyObjectProperty<SectionPicture> section() {
    return section.getReadOnlyProperty();
  }

  /** What the gauge shows now. */
  public ReadOnlyObjectProperty<LiveValue> live() {
    return live.getReadOnlyProperty();
  }

  /** The last seconds of live values; null unless the gauge is rocked. */
  public ReadOnlyObjectProperty<Trace> trace() {
    return trace.getReadOnlyProperty();
  }

  /** The cylinder's readings. */
  public ReadOnlyObjectProperty<Grid> grid() {
    return grid.getReadOnlyProperty();
  }

  /** How far the plan is. */
  public ReadOnlyObjectProperty<PlanProgress> progress() {
    return progress.getReadOnlyProperty();
  }

  /** How the line is. */
  public ReadOnlyObjectProperty<LineHealth> line() {
    return line.getReadOnlyProperty();
  }

  /** The last thing that happened. */
  public ReadOnlyObjectProperty<Saying> saying() {
    return saying.getReadOnlyProperty();
  }

  /** What a person should know of the line or the machine; null when nothing. */
  public ReadOnlyObjectProperty<Notice> notice() {
    return notice.getReadOnlyProperty();
  }

  /** The further gauges of the run; often empty. */
  public ReadOnlyObjectProperty<List<Beside>> besides() {
    return besides.getReadOnlyProperty();
  }

  /** A held value that waits for an answer; null when none does. */
  public ReadOnlyObjectProperty<Question> question() {
    return question.getReadOnlyProperty();
  }

  /** What the readings of the job mean; null until it was computed. */
  public ReadOnlyObjectProperty<JobResults> results() {
    return results.getReadOnlyProperty();
  }

  /** What is said when the run is over; null while it goes on. */
  public ReadOnlyObjectProperty<Closing> closing() {
    return closing.getReadOnlyProperty();
  }
}
