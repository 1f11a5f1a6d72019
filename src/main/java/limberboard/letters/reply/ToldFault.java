package limberboard.letters.reply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.letters.recognise.Recognition.Suspect;

/**
 * A fault that a conversation is about, with everything told of it so far. Immutable.
 *
 * @param suspect the symptom, with the chance and the words of the letter that told of it last
 * @param told what was told of its checks, the latest last, one for each check
 */
public record ToldFault(Suspect suspect, List<ToldAnswer> told) {
  /** Copies the list. */
  public ToldFault {
    told = List.copyOf(told);
  }

  /** The symptom's id. */
  public String symptom() {
    return suspect.id();
  }

  ToldFault seen(Suspect again) {
    return new ToldFault(again, told);
  }

  /** The same after an answer; it takes the place of an earlier one to the same check. */
  ToldFault with(String check, Optional<String> answer, String letter) {
    Optional<ToldAnswer> earlier =
        told.stream().filter(each -> each.check().equals(check)).findFirst();
    Optional<String> other =
        earlier.flatMap(ToldAnswer::answer).filter(was -> !answer.equals(Optional.of(was)));
    if (earlier.isPresent() && (answer.isEmpty() || earlier.get().answer().equals(answer))) {
      return this;
    }
    List<ToldAnswer> now = new ArrayList<>(told);
    earlier.ifPresent(now::remove);
    now.add(new ToldAnswer(check, answer, letter, other));
    return new ToldFault(suspect, now);
  }
}
