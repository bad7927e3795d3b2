package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.Heading;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The job, what is gauged and the gauge, on top. */
final class HeadPane extends HBox {
  private final Label job = Words.label("job", Styles.HEAD_JOB);
  private final Label gauged = Words.label("gauged");
  private final Label gauge = Words.label("gauge", Styles.HEAD_GAUGE);

  HeadPane(ObservableValue<Heading> heading) {
    getStyleClass().add(Styles.HEAD);
    gauged.setMinWidth(Region.USE_PREF_SIZE);
    gauge.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(gauge, Priority.ALWAYS);
    getChildren().addAll(job, gauged, gauge);
    heading.subscribe(this::show);
  }

  private void show(Heading heading) {
    job.setText(heading.job());
    job.setVisible(!heading.job().isEmpty());
    job.setManaged(job.isVisible());
    gauged.setText(heading.gauged());
    gauge.setText(heading.gauge());
  }
}
