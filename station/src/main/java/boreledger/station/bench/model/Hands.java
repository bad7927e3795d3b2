package boreledger.station.bench.model;

import boreledger.station.gauging.Wish;
import boreledger.station.gauging.Wish.By;
import boreledger.station.plan.Position;
import boreledger.station.session.Outcome;
import java.util.function.Consumer;
import java.util.function.Function;

/** What a person asks for, and the held value that a person is asked about. */
final class Hands {
  private final Consumer<Wish> wishes;
  private final Shown shown;
  private Outcome.Held held;
  private Besides besides;

  Hands(Consumer<Wish> wishes, Shown shown) {
    this.wishes = wishes;
    this.shown = shown;
  }

  /** Asks about a held value; null asks about none. */
  void ask(Sitting sitting, Outcome.Held waiting) {
    held = waiting;
    repeat(sitting);
  }

  /** Asks about held values of these as well, while none of the main gauge waits. */
  void beside(Besides further) {
    besides = further;
  }

  /** Puts the question again, in the unit that is wanted now. */
  void repeat(Sitting sitting) {
    shown.question.set(
        held == null ? besides.question(sitting.shownUnit()) : Question.of(sitting, held));
  }

  /** Takes the held value anyway; does nothing when none waits. */
  void confirm(Sitting sitting) {
    if (held != null) {
      Outcome.Held answered = answer(sitting);
      shown.saying.set(Saying.taking(sitting, answered));
      wishes.accept(new Wish.Confirm(answered, By.BENCH));
    } else {
      answerBeside(sitting, waiting -> new Wish.Confirm(waiting, By.BENCH));
    }
  }

  /** Leaves the held value; does nothing when none waits. */
  void leave(Sitting sitting) {
    if (held != null) {
      Outcome.Held answered = answer(sitting);
      shown.saying.set(Saying.left(sitting, answered));
      wishes.accept(new Wish.Leave(answered, By.BENCH));
    } else {
      answerBeside(sitting, waiting -> new Wish.Leave(waiting, By.BENCH));
    }
  }

  void perform(Command command, Sitting sitting) {
    switch (command) {
      case TAKE_BACK -> wishes.accept(new Wish.TakeBack(By.BENCH));
      case SKIP -> wishes.accept(new Wish.Skip(By.BENCH));
      case READ -> wishes.accept(new Wish.Read(By.BENCH));
      case CONFIRM -> confirm(sitting);
      case LEAVE -> leave(sitting);
    }
  }

  void goTo(Position position) {
    wishes.accept(new Wish.GoTo(position, By.BENCH));
  }

  private void answerBeside(Sitting sitting, Function<Outcome.Held, Wish> wish) {
    if (besides != null) {
      besides
          .answer()
          .ifPresent(
              answered -> {
                repeat(sitting);
                wishes.accept(wish.apply(answered));
              });
    }
  }

  private Outcome.Held answer(Sitting sitting) {
    Outcome.Held answered = held;
    ask(sitting, null);
    return answered;
  }
}
