package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.LetterPart;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;

/**
 * What answers to letters say at one place. The words are the page's body, in which {@code {name}}
 * stands for what is filled in.
 *
 * @param part the place (key {@code for})
 * @param when where there are words for different matters: which these are for; empty: all
 * @param cautions of what is urgent: the cautions that stand there in full
 * @param symptoms of what is urgent: the symptoms that call for these words however they are told
 */
public record Wording(
    @Required @JsonProperty("for") LetterPart part,
    List<String> when,
    List<CautionUse> cautions,
    @Names(Named.SYMPTOM) List<String> symptoms)
    implements Details {
  /** Absent entries become empty ones. */
  public Wording {
    when = EmptyValues.list(when);
    cautions = EmptyValues.list(cautions);
    symptoms = EmptyValues.list(symptoms);
  }

  @Override
  public Kind kind() {
    return Kind.WORDING;
  }
}
