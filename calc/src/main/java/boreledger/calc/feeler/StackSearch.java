package boreledger.calc.feeler;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.TreeSet;

/** Tries the stacks of a set, thinnest leaf first, and keeps the nearest. */
final class StackSearch {
  private static final Comparator<Candidate> BEST_FIRST =
      Comparator.comparing(Candidate::distance)
          .thenComparing(candidate -> candidate.leaves().size())
          .thenComparing(Candidate::total)
          .thenComparing(Candidate::leaves, StackSearch::compareLeaves);

  private final List<BigDecimal> leaves;
  private final BigDecimal gap;
  private final int most;
  private final int count;
  private final TreeSet<Candidate> best = new TreeSet<>(BEST_FIRST);
  private final Deque<BigDecimal> stack = new ArrayDeque<>();

  /**
   * A search.
   *
   * @param leaves thinnest first
   */
  StackSearch(List<BigDecimal> leaves, BigDecimal gap, int most, int count) {
    this.leaves = leaves;
    this.gap = gap;
    this.most = most;
    this.count = count;
  }

  List<LeafStack> nearest() {
    addFrom(0, BigDecimal.ZERO);
    return best.stream().map(this::told).toList();
  }

  private void addFrom(int first, BigDecimal below) {
    for (int i = first; i < leaves.size(); i++) {
      BigDecimal total = below.add(leaves.get(i));
      if (tooThick(total)) {
        return;
      }
      stack.addLast(leaves.get(i));
      offer(total);
      if (stack.size() < most) {
        addFrom(i + 1, total);
      }
      stack.removeLast();
    }
  }

  /** Leaves to come only add to a stack that is already farther above the gap than the worst. */
  private boolean tooThick(BigDecimal total) {
    return best.size() == count
        && total.compareTo(gap) > 0
        && distance(total).compareTo(best.last().distance()) > 0;
  }

  private void offer(BigDecimal total) {
    BigDecimal distance = distance(total);
    if (best.size() == count && distance.compareTo(best.last().distance()) > 0) {
      return;
    }
    best.add(new Candidate(List.copyOf(stack), total, distance));
    if (best.size() > count) {
      best.pollLast();
    }
  }

  private BigDecimal distance(BigDecimal total) {
    return total.subtract(gap).abs();
  }

  private LeafStack told(Candidate candidate) {
    return new LeafStack(
        candidate.leaves().stream().map(BigDecimal::doubleValue).toList(),
        candidate.total().doubleValue(),
        candidate.total().subtract(gap).doubleValue());
  }

  /** Leaf by leaf, of stacks that have as many of them. */
  private static int compareLeaves(List<BigDecimal> one, List<BigDecimal> other) {
    for (int i = 0; i < one.size(); i++) {
      int order = one.get(i).compareTo(other.get(i));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  private record Candidate(List<BigDecimal> leaves, BigDecimal total, BigDecimal distance) {}
}
