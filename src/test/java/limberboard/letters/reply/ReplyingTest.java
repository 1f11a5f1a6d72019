package limberboard.letters.reply;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.letters.answer.ToAnswer;
import limberboard.letters.mail.AnswerId;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.LetterAsFile;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.mail.MailReader;
import limberboard.letters.recognise.Teaching;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.Trace;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A letter goes on from the earlier letters of its conversation. */
class ReplyingTest {
  private static final String KEEL = "keel-will-not-stay-up";
  private static WorkspaceFolders folders;
  private static Workspace workspace;
  private static Teaching teaching;
  private static List<KeptLetter> demo;

  @BeforeAll
  static void learn() throws IOException {
    folders = new WorkspaceFolders(Path.of("").toAbsolutePath());
    workspace = new WorkspaceReader(folders).read();
    teaching = new Teaching(folders, workspace, LocalDate.of(2026, 11, 29));
    demo = LetterFiles.mail(folders.letters());
  }

  private static Replying replying(List<KeptLetter> kept) {
    return new Replying(teaching, workspace, new Conversations(kept));
  }

  private static Letter mail(int day, String id, String answers, String text) throws IOException {
    String mail =
        "From: A. N. Owner <owner@example.org>\nSubject: Hello\nDate: "
            + day
            + " May 2026 08:00:00 +0000\nMessage-ID: <"
            + id
            + "@example.org>\n"
            + (answers.isEmpty() ? "" : "In-Reply-To: " + answers + "\n")
            + "\n"
            + text
            + "\n";
    return MailReader.read(new ByteArrayInputStream(mail.getBytes(StandardCharsets.UTF_8)));
  }

  private static Letter first() throws IOException {
    return mail(
        1,
        "first",
        "",
        "On Whimbrel the keel creeps down overnight. The lowering valve was hard shut.");
  }

  private static Optional<String> answer(Reply reply, String check) {
    return Optional.ofNullable(reply.traces().get(0).answers().get(check));
  }

  @Test
  void whatTheFirstLetterToldIsNotAskedAgain() throws IOException {
    Replying alone = replying(List.of());
    Reply first = alone.to(first());
    assertThat(answer(first, "valve-knob")).contains("hard-shut");
    AnswerDraft draft = alone.draft(first).orElseThrow();
    AskedCheck asked = draft.questions().get(0);
    String told = asked.answers().get(0).replace('-', ' ');
    Letter second =
        mail(3, "second", "<first@example.org>", "Hello again,\n\n1: " + told + "\n\nRegards");

    Replying going = replying(List.of(new KeptLetter("first.eml", first())));
    Reply reply = going.to(second);
    assertThat(reply.earlier()).extracting(KeptLetter::name).containsExactly("first.eml");
    assertThat(reply.boat().orElseThrow().id()).isEqualTo("whimbrel");
    assertThat(reply.isFault()).isTrue();
    assertThat(reply.symptoms().get(0).id()).isEqualTo(KEEL);
    assertThat(answer(reply, "valve-knob")).contains("hard-shut");
    assertThat(answer(reply, asked.check())).contains(asked.answers().get(0));
    AnswerDraft next = going.draft(reply).orElseThrow();
    assertThat(next.questions())
        .extracting(AskedCheck::check)
        .doesNotContain(asked.check(), "valve-knob");
  }

  @Test
  void numbersAreThoseOfTheAnswerThatIsQuoted() throws IOException {
    String quoted =
        "2: hard shut\n\n> 1. Is something?\n> 2. "
            + workspace
                .library()
                .symptom(KEEL)
                .orElseThrow()
                .details()
                .check("valve-knob")
                .orElseThrow()
                .ask()
                .replaceFirst(" (?=\\w+\\?)", "\n> ");
    Letter first = mail(1, "first", "", "On Whimbrel the keel creeps down overnight.");
    Letter second = mail(3, "second", "<first@example.org>", quoted);
    Reply reply = replying(List.of(new KeptLetter("first.eml", first))).to(second);
    assertThat(answer(reply, "valve-knob")).contains("hard-shut");
  }

  @Test
  void aLaterAnswerTakesTheEarlierOnesPlaceAndIsSaid() throws IOException {
    Letter second =
        mail(
            3,
            "second",
            AnswerId.of(first().head(), new UUID(3, 4)),
            "I was wrong. The keel creeps down overnight. I looked again: the lowering knob was"
                + " half a turn open, it moved.");
    Replying going = replying(List.of(new KeptLetter("first.eml", first())));
    Reply reply = going.to(second);
    assertThat(answer(reply, "valve-knob")).isPresent().isNotEqualTo(Optional.of("hard-shut"));
    ToldAnswer told =
        reply.faults().get(0).told().stream()
            .filter(each -> each.check().equals("valve-knob"))
            .findFirst()
            .orElseThrow();
    assertThat(told.before()).contains("hard-shut");
    assertThat(told.isNow()).isTrue();
    assertThat(going.draft(reply).orElseThrow().block("changed").orElseThrow().text())
        .contains("Before: hard shut. Now: ");
  }

  @Test
  void anotherBoatInTheSameThreadBeginsAnew() throws IOException {
    Letter second =
        mail(3, "second", "<first@example.org>", "Redshank's keel creeps down overnight, too.");
    Reply reply = replying(List.of(new KeptLetter("first.eml", first()))).to(second);
    assertThat(reply.boat().orElseThrow().id()).isEqualTo("redshank");
    assertThat(reply.earlier()).isEmpty();
    assertThat(answer(reply, "valve-knob")).isEmpty();
  }

  @Test
  void thanksInAThreadAreNoFault() throws IOException {
    Letter thanks = mail(3, "second", "<first@example.org>", "Thank you very much for your help!");
    Reply reply = replying(List.of(new KeptLetter("first.eml", first()))).to(thanks);
    assertThat(reply.isFault()).isFalse();
    assertThat(reply.toAnswer().about()).isEqualTo(new ToAnswer.NoFault("thanks"));
  }

  @Test
  void whatAProgramWroteIsNotAnswered() throws IOException {
    Replying going = replying(demo);
    Letter away = LetterAsFile.read(folders.letters().resolve("out-of-office-brackwell.eml"));
    assertThat(going.draft(going.to(away))).isEmpty();
  }

  @Test
  void theDemoLettersThatGoOnAreJoinedToTheirCases() throws IOException {
    Replying going = replying(demo);
    List<String> joined = new ArrayList<>();
    List<String> goOn = new ArrayList<>();
    for (KeptLetter kept : demo) {
      Reply reply = going.to(kept.letter());
      reply.earlier().forEach(earlier -> joined.add(kept.name() + " to " + earlier.name()));
      for (Trace trace : reply.traces()) {
        List<String> earlier =
            reply.faults().stream()
                .filter(fault -> fault.symptom().equals(trace.fault().page().id()))
                .flatMap(fault -> fault.told().stream())
                .filter(told -> !told.isNow())
                .map(ToldAnswer::check)
                .toList();
        if (!earlier.isEmpty()) {
          goOn.add(kept.name());
          AnswerDraft draft = going.draft(reply).orElseThrow();
          assertThat(draft.questions())
              .as(kept.name())
              .extracting(AskedCheck::check)
              .doesNotContainAnyElementsOf(earlier);
        }
      }
    }
    assertThat(joined)
        .contains(
            "ines-hose-second.eml to drips-on-the-pillow-sanderling.eml",
            "redshank-oil-second.eml to keel-oil-redshank-school.eml");
    assertThat(goOn)
        .contains("turnstone-batten-second.eml", "meter-on-the-plug-sanderling.eml")
        .doesNotContain("old-thread-new-fault-dunlin.eml", "out-of-office-brackwell.eml");
  }

  @Test
  void aBoatThatIsNotKnownStillGetsWhatCannotWait() throws IOException {
    Letter letter = mail(1, "x", "", "There is water under the floor in the middle, salt water.");
    Replying alone = replying(List.of());
    Letter nobody = new Letter(LetterHead.NONE, letter.passages(), List.of(), List.of());
    Reply reply = alone.to(nobody);
    assertThat(reply.toAnswer().about()).isInstanceOf(ToAnswer.BoatUnknown.class);
    AnswerDraft draft = alone.draft(reply).orElseThrow();
    assertThat(draft.block("which-boat")).isPresent();
    assertThat(draft.block("emergency/flooding")).isPresent();
  }
}
