package limberboard.upkeep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.boat.WorkMinutes;
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
  Rounds(Library library, WorkMinutes minutes) {
    for (Page<Procedure> round : library.all(Procedure.class)) {
      for (RoundWork each : minutes.of(round).details().round()) {
        library
            .procedure(each.work())
            .ifPresent(
                work -> members.putIfAbsent(work.id(), Member.of(round, each, minutes.of(work))));
      }
    }
  }

  /** Work that belongs to a round. */
  private record Member(String round, int minutes) {
    static Member of(Page<Procedure> round, RoundWork each, Page<Procedure> work) {
      return new Member(round.id(), each.minutes().orElse(OwnerTime.of(work.details())));
    }
  }

  /** What is due, with what is done with a round in that round; the order is kept. */
  List<Due> grouped(List<Due> due) {
    Map<String, Due> rounds = new HashMap<>();
    due.stream()
        .filter(each -> !each.isLookAgain() && each.work().details().isRound())
        .forEach(each -> rounds.put(each.work().id(), each));
    Map<String, List<Due>> with = new HashMap<>();
    List<Due> lines = new ArrayList<>();
    for (Due each : due) {
      Member member = each.isLookAgain() ? null : members.get(each.work().id());
      Due round = member == null ? null : rounds.get(member.round());
      if (round != null && isTogether(round, each)) {
        with.computeIfAbsent(round.work().id(), id -> new ArrayList<>())
            .add(each.in(new InRound(member.round(), member.minutes())));
      } else {
        lines.add(each);
      }
    }
    return lines.stream()
        .map(
            line ->
                line.isLookAgain() ? line : line.graver(with.getOrDefault(line.id(), List.of())))
        .toList();
  }

  private static boolean isTogether(Due round, Due each) {
    return each.runsOut().isPresent()
        && round.isNow() == each.isNow()
        && (round.isNow() || round.season() == each.season())
        && isTogether(round.phase(), each.phase());
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
    Set<String> seen = new HashSet<>();
    List<Planned> marked = new ArrayList<>();
    for (Planned each : planned) {
      Member member = each.after().isPresent() ? null : members.get(each.work().id());
      Planned round = member == null ? null : rounds.get(key(member.round(), each, firstSeason));
      boolean joins =
          round != null
              && isTogether(round.phase(), each.phase())
              && seen.add(key(each.work().id(), each, firstSeason));
      marked.add(joins ? each.in(new InRound(member.round(), member.minutes())) : each);
    }
    return List.copyOf(marked);
  }

  private static String key(String id, Planned each, int firstSeason) {
    return id + " " + Math.max(each.season(), firstSeason);
  }
}
