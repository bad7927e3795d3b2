package boreledger.station.bench.jobform;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;

/** Where a person types or chooses. */
interface FieldInput {
  /** What stands on the form. */
  Node node();

  /** Everything in it that can have the focus; the first is where a person begins. */
  List<? extends Node> stops();

  /** Shows a value; nobody is told of it. */
  void show(String value);

  /** The value that stands in it now. */
  String value();

  /** Told each value that a person types or chooses. */
  void onTyped(Consumer<String> action);

  /** What screen readers say when they come here. */
  void describe(String words);
}
