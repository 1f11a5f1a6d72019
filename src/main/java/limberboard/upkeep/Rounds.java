package limberboard.upkeep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.RoundWork;
import limberboard.library.value.Phase;

/**
 * Says what is done at one go: work of a round that is due with it, in the same season and in the
 * same part of the boat's year. What is not due then, or not in that part of the year, stays by
 * itself. Immutable.
 */
final class Rounds {
  private final Map<String, Member> members = new HashMap<>();

  /** The rounds of these pages. */
  Rounds(Library library) {
    for (Page<Procedure> round : library.all(Procedure.class)) {
      for (RoundWork each : round.details().round()) {
        library
            .procedure(each.work())
            .ifPresent(work -> members.putIfAbsent(work.id(), Member.of(round, each, work)));
      }
    }
  }

  /** Work that belongs to a round. */
  private record Member(String round, int minutes) {
    static Member of(Page<Procedure> round, RoundWork each, Page<Procedure> work) {
      return new Member(round.id(), each.minutes().orElse(OwnerTime.of(work.details())));
    }
  }

  /** What is due, each round followed by what is done with it; the order is kept otherwise. */
  List<Due> grouped(List<Due> due) {
    Map<String, Due> rounds = new HashMap<>();
    due.stream()
        .filter(each -> !each.isLookAgain() && each.work().details().isRound())
        .forEach(each -> rounds.put(each.work().id(), each));
    Map<String, List<Due>> children = new HashMap<>();
    Map<Due, Boolean> taken = new LinkedHashMap<>();
    for (Due each : due) {
      Member member = each.isLookAgain() ? null : members.get(each.work().id());
      Due round = member == null ? null : rounds.get(member.round());
      boolean joins = round != null && isTogether(round, each);
      taken.put(each, joins);
      if (joins) {
        children
            .computeIfAbsent(member.round(), id -> new ArrayList<>())
            .add(each.in(new InRound(member.round(), member.minutes())));
      }
    }
    List<Due> grouped = new ArrayList<>();
    taken.forEach(
        (each, joined) -> {
          if (!joined) {
            List<Due> with = children.getOrDefault(each.work().id(), List.of());
            boolean isRound = rounds.get(each.work().id()) == each;
            grouped.add(isRound ? each.graver(with) : each);
            grouped.addAll(isRound ? with : List.of());
          }
        });
    return List.copyOf(grouped);
  }

  private static boolean isTogether(Due round, Due each) {
    boolean roundNow = isNow(round);
    return each.runsOut().isPresent()
        && roundNow == isNow(each)
        && (roundNow || round.season() == each.season())
        && isTogether(round.phase(), each.phase());
  }

  private static boolean isNow(Due due) {
    return due.group() == Due.Group.OVERDUE || due.group() == Due.Group.THIS_SEASON;
  }

  private static boolean isTogether(Optional<Phase> round, Optional<Phase> each) {
    return round.isEmpty() || each.isEmpty() || round.equals(each);
  }

  /**
   * What is expected, with what is done at one go marked so: of each season the first doing of work
   * with the round's first.
   *
   * @param firstSeason what is expected for an earlier season is done in this one
   */
  List<Planned> marked(List<Planned> planned, int firstSeason) {
    Map<String, Planned> rounds = new HashMap<>();
    planned.stream()
        .filter(each -> each.after().isEmpty() && each.work().details().isRound())
        .forEach(each -> rounds.putIfAbsent(key(each.work().id(), each, firstSeason), each));
    Map<String, Boolean> seen = new HashMap<>();
    List<Planned> marked = new ArrayList<>();
    for (Planned each : planned) {
      Member member = each.after().isPresent() ? null : members.get(each.work().id());
      Planned round = member == null ? null : rounds.get(key(member.round(), each, firstSeason));
      boolean joins =
          round != null
              && isTogether(round.phase(), each.phase())
              && seen.put(key(each.work().id(), each, firstSeason), true) == null;
      marked.add(joins ? each.in(new InRound(member.round(), member.minutes())) : each);
    }
    return List.copyOf(marked);
  }

  private static String key(String id, Planned each, int firstSeason) {
    return id + " " + Math.max(each.season(), firstSeason);
  }
}
