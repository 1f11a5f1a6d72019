package limberboard.letters.reply;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import limberboard.letters.mail.AnswerId;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.LetterHead;

/**
 * Which letters belong together, by the ids in their headers (RFC 5322, section 3.6.4): {@code
 * Message-ID}, {@code In-Reply-To} and {@code References}. Letters that name the same id belong
 * together too, so those between which our own answers lie do, also where no answer was kept. A
 * subject joins nothing: many letters are about <i>the keel</i>. Immutable.
 */
public final class Conversations {
  private final List<KeptLetter> kept;
  private final Map<String, String> byKey = new HashMap<>();
  private final Map<String, LetterHead> byId = new HashMap<>();
  private final Map<String, Set<String>> together = new HashMap<>();

  /** Those of these letters. */
  public Conversations(List<KeptLetter> kept) {
    this.kept = List.copyOf(kept);
    for (KeptLetter each : this.kept) {
      LetterHead head = each.letter().head();
      head.id().ifPresent(id -> byKey.putIfAbsent(AnswerId.key(id), id));
      head.id().ifPresent(id -> byId.putIfAbsent(id, head));
    }
    this.kept.forEach(each -> join(named(each.letter().head())));
  }

  private void join(List<String> ids) {
    for (String id : ids) {
      together.computeIfAbsent(ids.get(0), unseen -> new HashSet<>()).add(id);
      together.computeIfAbsent(id, unseen -> new HashSet<>()).add(ids.get(0));
    }
  }

  /** All ids that a header names, its own first. */
  private List<String> named(LetterHead head) {
    List<String> ids = new ArrayList<>(head.id().stream().toList());
    ids.addAll(answered(head.repliesTo()));
    head.id().flatMap(AnswerId::answered).map(byKey::get).ifPresent(ids::add);
    return ids;
  }

  /** Ids, and those of the letters that our answers among them answer. */
  private List<String> answered(List<String> ids) {
    List<String> all = new ArrayList<>(ids);
    ids.forEach(id -> AnswerId.answered(id).map(byKey::get).ifPresent(all::add));
    return all;
  }

  /**
   * The letters of the same conversation that were written before this one, the earliest first,
   * those without a date before the others; our own answers among them.
   *
   * @param letter one of these letters, or a new one
   */
  public List<KeptLetter> before(Letter letter) {
    LetterHead head = letter.head();
    if (head.repliesTo().isEmpty()) {
      return List.of();
    }
    Set<String> ids = reached(named(head), id -> together.getOrDefault(id, Set.of()));
    Set<String> answered =
        reached(
            answered(head.repliesTo()),
            id -> byId.containsKey(id) ? answered(byId.get(id).repliesTo()) : List.of());
    return kept.stream()
        .filter(each -> !each.letter().equals(letter) && !isSame(each.letter().head(), head))
        .filter(each -> named(each.letter().head()).stream().anyMatch(ids::contains))
        .filter(each -> isBefore(each.letter().head(), head, answered))
        .sorted(Comparator.comparing(each -> written(each.letter().head())))
        .toList();
  }

  private static Set<String> reached(
      List<String> from, Function<String, Collection<String>> onwards) {
    Set<String> ids = new HashSet<>(from);
    Deque<String> open = new ArrayDeque<>(from);
    while (!open.isEmpty()) {
      for (String id : onwards.apply(open.pop())) {
        if (ids.add(id)) {
          open.push(id);
        }
      }
    }
    return ids;
  }

  private static boolean isSame(LetterHead one, LetterHead other) {
    return one.id().isPresent() && one.id().equals(other.id());
  }

  /** By what was answered with what; of the others by their dates. */
  private static boolean isBefore(LetterHead other, LetterHead head, Set<String> answered) {
    boolean after = head.id().filter(other.repliesTo()::contains).isPresent();
    boolean before = other.id().filter(answered::contains).isPresent();
    Optional<OffsetDateTime> date = head.date();
    return !after
        && (before
            || date.isPresent()
                && other.date().filter(when -> when.isBefore(date.get())).isPresent());
  }

  private static Instant written(LetterHead head) {
    return head.date().map(OffsetDateTime::toInstant).orElse(Instant.MIN);
  }
}
