package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Counts once what two uses of one material take for the same thing: a job and another that is done
 * by doing it, or work that makes a rope anew and that rope chosen by itself. What a job and its
 * parts take is as much as the job itself says, or as its parts take together, whichever is more;
 * all other uses are added up. For one list, on one thread.
 */
final class SharedUses {
  private static final double HAIR = 1e-9;

  /** More pieces than this are not compared one by one, but by their length together. */
  private static final long MOST_PIECES = 2_000;

  private final Included included;
  private final Map<String, NewRope> ropes = new HashMap<>();

  SharedUses(Included included, List<NewRope> ropes) {
    this.included = included;
    ropes.forEach(rope -> this.ropes.putIfAbsent(rope.id(), rope));
  }

  /** One piece that a use cuts. */
  private record Piece(Usage use, int order) {
    private static final Comparator<Piece> LONGEST_FIRST =
        Comparator.comparing((Piece piece) -> piece.use().pieceLength())
            .reversed()
            .thenComparing(Piece::order);
  }

  /**
   * The uses, each with what is got for it.
   *
   * @param uses of one material, in the order of their days
   */
  List<Usage> of(List<Usage> uses) {
    Family family = new Family(elsewhere(uses));
    List<Usage> all = family.uses;
    boolean inPieces = all.stream().anyMatch(use -> use.pieceLength() > 0);
    boolean few = all.stream().mapToLong(Usage::pieces).sum() <= MOST_PIECES;
    return inPieces && few ? family.inPieces() : family.byAmount();
  }

  /** Leaves out what is cut for a rope that is made of something else. */
  private List<Usage> elsewhere(List<Usage> uses) {
    List<String> here =
        uses.stream().filter(use -> use.by() instanceof NewRope).map(use -> use.by().id()).toList();
    List<Usage> left = new ArrayList<>();
    List<String> taken = new ArrayList<>();
    for (Usage use : uses) {
      List<BoughtFor> others = new ArrayList<>();
      long pieces = use.pieces();
      for (String id : use.ropes()) {
        NewRope rope = ropes.get(id);
        if (use.by() instanceof Job
            && rope != null
            && rope.rope().isReckoned()
            && !here.contains(id)
            && pieces > 0
            && !taken.contains(id)) {
          taken.add(id);
          others.add(rope);
          pieces = Math.max(0, pieces - rope.rope().count());
        }
      }
      left.add(others.isEmpty() ? use : use.counting(pieces * use.pieceLength(), pieces, others));
    }
    return left;
  }

  /** The uses of one material. */
  private final class Family {
    private final List<Usage> uses;
    private final Map<Usage, Integer> order = new IdentityHashMap<>();
    private final Map<Job, List<Usage>> ofJob = new IdentityHashMap<>();
    private final Map<Usage, List<Usage>> ropesOf = new IdentityHashMap<>();
    private final Map<Usage, Usage> workOf = new IdentityHashMap<>();

    Family(List<Usage> all) {
      uses = all;
      for (Usage use : all) {
        order.put(use, order.size());
        if (use.by() instanceof Job job) {
          ofJob.computeIfAbsent(job, key -> new ArrayList<>()).add(use);
        }
      }
      all.stream().filter(use -> use.by() instanceof NewRope).forEach(this::join);
    }

    private void join(Usage rope) {
      uses.stream()
          .filter(use -> use.by() instanceof Job && use.ropes().contains(rope.by().id()))
          .findFirst()
          .ifPresent(
              work -> {
                workOf.put(rope, work);
                ropesOf.computeIfAbsent(work, key -> new ArrayList<>()).add(rope);
              });
    }

    /** What heads the uses that are for the same thing: a job, or a rope by itself. */
    private BoughtFor head(Usage use) {
      Usage work = workOf.getOrDefault(use, use);
      return work.by() instanceof Job job ? included.root(job) : work.by();
    }

    /** By amount: each gets what it adds to what those before it take. */
    List<Usage> byAmount() {
      Map<BoughtFor, Map<Usage, Double>> before = new IdentityHashMap<>();
      List<Usage> counted = new ArrayList<>();
      for (Usage use : uses) {
        BoughtFor head = head(use);
        Map<Usage, Double> known = before.computeIfAbsent(head, key -> new IdentityHashMap<>());
        double less = amount(head, known);
        known.put(use, use.amount());
        double more = amount(head, known) - less;
        counted.add(
            more > use.amount() * (1 - HAIR)
                ? use
                : counting(use, Math.max(0, more), use.pieces()));
      }
      return counted;
    }

    private double amount(BoughtFor head, Map<Usage, Double> known) {
      if (!(head instanceof Job job)) {
        return known.values().stream().mapToDouble(Double::doubleValue).sum();
      }
      double own = 0;
      for (Usage use : ofJob.getOrDefault(job, List.of())) {
        double ofRopes = 0;
        for (Usage rope : ropesOf.getOrDefault(use, List.of())) {
          ofRopes += known.getOrDefault(rope, 0.0);
        }
        own += Math.max(known.getOrDefault(use, 0.0), ofRopes);
      }
      double ofParts = 0;
      for (Job part : included.parts(job)) {
        ofParts += amount(part, known);
      }
      return Math.max(own, ofParts);
    }

    /** In pieces: the longest of one with the longest of the other, and of each two the longer. */
    List<Usage> inPieces() {
      Map<Usage, Integer> got = new IdentityHashMap<>();
      Set<BoughtFor> heads = Collections.newSetFromMap(new IdentityHashMap<>());
      uses.forEach(use -> heads.add(head(use)));
      heads.forEach(head -> pieces(head).forEach(piece -> got.merge(piece.use(), 1, Integer::sum)));
      List<Usage> counted = new ArrayList<>();
      for (Usage use : uses) {
        int pieces = got.getOrDefault(use, 0);
        counted.add(
            pieces == use.pieces() ? use : counting(use, pieces * use.pieceLength(), pieces));
      }
      return counted;
    }

    private List<Piece> pieces(BoughtFor head) {
      if (!(head instanceof Job job)) {
        return uses.stream()
            .filter(use -> use.by() == head)
            .flatMap(use -> pieces(use).stream())
            .toList();
      }
      List<Piece> own = new ArrayList<>();
      for (Usage use : ofJob.getOrDefault(job, List.of())) {
        List<Piece> ofRopes = new ArrayList<>();
        ropesOf.getOrDefault(use, List.of()).forEach(rope -> ofRopes.addAll(pieces(rope)));
        own.addAll(longer(pieces(use), ofRopes));
      }
      List<Piece> ofParts = new ArrayList<>();
      included.parts(job).forEach(part -> ofParts.addAll(pieces(part)));
      return longer(own, ofParts);
    }

    private List<Piece> pieces(Usage use) {
      return Stream.generate(() -> new Piece(use, order.get(use))).limit(use.pieces()).toList();
    }

    private static List<Piece> longer(List<Piece> a, List<Piece> b) {
      List<Piece> some = a.stream().sorted(Piece.LONGEST_FIRST).toList();
      List<Piece> others = b.stream().sorted(Piece.LONGEST_FIRST).toList();
      List<Piece> longer = new ArrayList<>();
      for (int i = 0; i < Math.max(some.size(), others.size()); i++) {
        int at = i;
        Stream.of(some, others)
            .filter(list -> at < list.size())
            .map(list -> list.get(at))
            .min(Piece.LONGEST_FIRST)
            .ifPresent(longer::add);
      }
      return longer;
    }

    private Usage counting(Usage use, double amount, long pieces) {
      List<BoughtFor> with = new ArrayList<>(use.got().with());
      for (Usage other : uses) {
        if (other != use && isSameThing(use, other) && !with.contains(other.by())) {
          with.add(other.by());
        }
      }
      return use.counting(amount, pieces, with);
    }

    private boolean isSameThing(Usage use, Usage other) {
      if (workOf.get(use) == other || workOf.get(other) == use) {
        return true;
      }
      Optional<Job> one = job(use);
      Optional<Job> two = job(other);
      return one.isPresent()
          && two.isPresent()
          && one.get() != two.get()
          && included.isOneOfTheOther(one.get(), two.get());
    }

    private Optional<Job> job(Usage use) {
      return workOf.getOrDefault(use, use).by() instanceof Job job
          ? Optional.of(job)
          : Optional.empty();
    }
  }
}
