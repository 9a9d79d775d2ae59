package org.tidegate.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Whether each block does its work. That each is there, and in which order they stand, the keys hold already; here: that a
 * result is told where it belongs and nowhere else, that nothing promises too much, and that every text can be filled.
 */
final class BlockChecks {

    private final LetterTexts texts;
    private final Faults faults;

    BlockChecks(LetterTexts texts, Faults faults) {
        this.texts = texts;
        this.faults = faults;
    }

    void check() {
        ResultWords words = texts.resultWords();
        result(texts.negative(), words.negative());
        result(texts.positive(), words.positive());
        result(texts.invalid(), words.invalid());
        for (PlainLetter letter : texts.plain()) {
            filled(letter, letter.blocks());
            noTwins(letter, letter.blocks());
            harmless(letter, letter.blocks());
        }
        frame();
        harmless(
                texts.request(),
                List.of(
                        texts.request().opening(),
                        texts.request().over(),
                        texts.request().ending()));
        texts.discrepancies().values().forEach(w -> harmless(w, w.everything()));
        if (texts.neverSay().isEmpty()) {
            faults.in(texts, "never_say is empty", "name at least one phrase, such as 'you are healthy'");
        }
    }

    /** The first block tells the result of its own letter, in the words that are named for it; no block tells another. */
    private void result(ResultLetter letter, String own) {
        if (!Phrase.of(own).in(letter.result().text())) {
            faults.in(
                    letter, "the block 'result' does not say '" + own + "'", "the result stands first, in plain words");
        }
        List<String> others = new ArrayList<>(texts.resultWords().all());
        others.remove(own);
        letter.everything().forEach(block -> tellsNone(letter, block, others));
        filled(letter, letter.everything());
        noTwins(letter, letter.everything());
        letter.everything().forEach(block -> promisesNothing(letter, block));
    }

    /** What stands in every letter, whatever it is about. */
    private void frame() {
        List<Template> frame =
                List.of(texts.greeting(), texts.urgentHelp(), texts.questions(), texts.caution(), texts.signature());
        harmless(texts, frame);
        Set<String> always = Set.of("name", "service", "clinic_phone", "urgent_number");
        frame.forEach(t -> only(texts, t, always));
    }

    private void harmless(Object where, List<Template> blocks) {
        blocks.forEach(block -> tellsNone(where, block, texts.resultWords().all()));
        blocks.forEach(block -> promisesNothing(where, block));
    }

    private void tellsNone(Object where, Template block, List<String> results) {
        results.stream()
                .filter(r -> Phrase.of(r).in(block.text()))
                .forEach(r -> faults.in(
                        where,
                        "'" + block.text() + "' tells the result '" + r + "'",
                        "a result stands in its own letter only, which a trained reader releases"));
    }

    private void promisesNothing(Object where, Template block) {
        texts.neverSay().stream()
                .filter(p -> Phrase.of(p).in(block.text()))
                .forEach(p -> faults.in(
                        where,
                        "'" + block.text() + "' promises too much: '" + p + "'",
                        "no test rules an infection out; never_say lists what no letter says"));
    }

    /** A hole would be found only when the letter is to go out. */
    private void filled(Letter letter, List<Template> blocks) {
        blocks.forEach(block -> only(letter, block, letter.known()));
    }

    private void only(Object where, Template block, Set<String> known) {
        Set<String> holes = new TreeSet<>(block.placeholders());
        holes.removeAll(known);
        if (!holes.isEmpty()) {
            faults.in(
                    where,
                    "'" + block.text() + "' uses {" + String.join("}, {", holes) + "}, which may not be known there",
                    "known: " + String.join(", ", new TreeSet<>(known)));
        }
    }

    /** The same text twice means that one block is not there at all. */
    private void noTwins(Letter letter, List<Template> blocks) {
        Set<Template> seen = new HashSet<>();
        blocks.stream()
                .filter(b -> !seen.add(b))
                .forEach(b -> faults.in(
                        letter,
                        "two blocks say the same: '" + b.text() + "'",
                        "each block says what its key asks for"));
    }
}
