package org.tidegate.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every way to damage a rule file ends in one fault at the right line, with words that help. */
class RuleFaultsTest {

    /** A fault of a whole record points at its first line. */
    private static final int RECORD = 6;

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            timing.yaml;     grace: PT1M;              grase: PT1M;                     unknown key 'grase' (did you mean 'grace'?)
            timing.yaml;     grace: PT1M;              grace: 1 minute;                 '1 minute' is not a duration such as PT20M
            timing.yaml;     grace: PT1M;              grace: -PT1M;                    '-PT1M' is not a duration
            timing.yaml;     grace: PT1M;              grace: [PT1M];                   expected a duration
            timing.yaml;     grace: PT1M;              grace:;                          expected a duration
            timing.yaml;     zone: Europe/London;      zone: Europe/Skarra;             'Europe/Skarra' is not a time zone
            timing.yaml;     internal_date_is_delivery: false; internal_date_is_delivery: no; 'no' is not true or false
            timing.yaml;     same_phone: [];           same_phone: none;                expected a list
            clinics.yaml;    code: PIER;               code: QUAY;                      clinic 'QUAY' is there twice
            clinics.yaml;    name: North Pier clinic;  title: North Pier clinic;         unknown key 'title'
            protocols.yaml;  submit_from: read_from;   submit_from: reading;            'reading' is not one of read_from, slot_end, test
            protocols.yaml;  read_from: PT20M;         read_from: PT40M;                read_from is not before read_until
            checks.yaml;     code: read-early;         code: read-erly;                 'read-erly' is not a discrepancy code
            checks.yaml;     code: late-in-transit;    code: late;                      check 'late' is there twice
            checks.yaml;     severity: aside;          severity: stop;                  'stop' is not one of aside, hold, note
            checks.yaml;     e.nature != 'personal';   e.nature !=;                      is not a CEL condition
            checks.yaml;     judged_by: [operator;     judged_by: [opertor;             judged_by names the unknown role 'opertor'
            limits.yaml;     parts: 500;               parts: many;                     'many' is not a whole number
            service.yaml;    replies_per_address: 5;   replies_per_address: 0;          0 is out of range
            hours.yaml;      from: "07:00";            from: seven;                     'seven' is not a time of day
            hours.yaml;      days: [monday;            days: [moonday;                  'moonday' is not one of friday, monday
            hours.yaml;      days: [monday, tuesday, wednesday, thursday, friday, saturday, sunday]; days: []; there is no shift
            hours.yaml;      zone: Europe/London;      zone: Skarra;                    'Skarra' is not a time zone
            hours.yaml;      address: on-call@;        address: nobody@;                is not among own_addresses (add it to service.yaml)
            hours.yaml;      https://tidegate;         tidegate;                        console_address is no address of a page
            hours.yaml;      again_after: PT1H;        again_after: hourly;             'hourly' is not a duration such as
            hours.yaml;      it came at {received};    it came from {name};             {name} does not stand in a notice (only link
            unattended.yaml; ask_for: [no-photo;       ask_for: [urgent-words;          ask_for names 'urgent-words', which a person judges (only measured faults:
            unattended.yaml; ask_for: [no-photo;       ask_for: [late;                  ask_for names 'late', which a person judges
            unattended.yaml; leave_to_people: [urgent-words; leave_to_people: [no-id;   'no-id' stands in ask_for and in leave_to_people (keep one)
            unattended.yaml; letters_per_address: 3;   letters_per_address: 6;          letters_per_address is more than replies_per_address
            unattended.yaml; letters_per_address: 3;   letters_per_address: 0;          0 is out of range
            unattended.yaml; ask: true;                ask: maybe;                      'maybe' is not true or false
            service.yaml;    languages: [en, es, fr, pl]; languages: [en, no];          'no' is a number, date or truth value
            matching.yaml;   match_at: 0.99;           match_at: 99;                    99.0 is out of range (from 0.0 to 1.0)
            protocols.yaml;  from: 0.66;               from: 0.9;                       writing ends before it begins
            retention.yaml;  cassettes: P90D;          cassettes: P3M2D;                cassettes is longer than messages
            retention.yaml;  messages: P90D;           messages: 90;                    '90' is not a period
            """)
    void oneFault(String file, String from, String to, String expected) throws Exception {
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"));
        int line = rules.lineOf(file, from);
        List<RuleFault> faults = rules.edit(file, from, to).faults();
        assertThat(faults).as("%s: %s", file, to).isNotEmpty().anySatisfy(f -> {
            assertThat(f.file()).isEqualTo(file);
            assertThat(f.toString()).contains(expected);
            assertThat(f.line()).as(f.toString()).isBetween(line - RECORD, line);
        });
    }

    @Test
    void allFaultsAtOnceInOrder() throws Exception {
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"))
                .edit("timing.yaml", "grace: PT1M\n", "")
                .edit("timing.yaml", "hop_gap: PT10M", "hop_gap: ten")
                .edit("clinics.yaml", "code: QUAY", "kode: QUAY")
                .edit("texts/pl.yaml", "{received}", "{recieved}");
        Files.delete(rules.path().resolve("limits.yaml"));
        Files.writeString(rules.path().resolve("timings.yaml"), "zone: Europe/London");
        assertThat(rules.faults())
                .extracting(f -> f.file() + " " + f.what())
                .containsExactly(
                        "clinics.yaml unknown key 'kode'",
                        "clinics.yaml the key 'code' is missing",
                        "limits.yaml the file is missing",
                        "texts/pl.yaml 'Twoja wiadomość dotarła do nas o {recieved}. Dziękujemy.' is not a text of a letter: "
                                + "unknown placeholder {recieved}; known: "
                                + String.join(
                                        ", ",
                                        Template.PLACEHOLDERS.stream().sorted().toList()),
                        "timing.yaml the key 'grace' is missing",
                        "timing.yaml 'ten' is not a duration such as PT20M (ISO 8601), not negative",
                        "timings.yaml nothing reads this file");
    }

    @Test
    void pointsAtLineAndColumn() throws Exception {
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"));
        int line = rules.lineOf("timing.yaml", "grace: PT1M");
        assertThat(rules.edit("timing.yaml", "grace: PT1M", "grace:   1h").faults())
                .extracting(f -> f.line() + ":" + f.column())
                .containsExactly(line + ":10");
    }

    @Test
    void refusesLettersThatLackWhatTheyMustSay() throws Exception {
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"))
                .edit("texts/en.yaml", "  isolation:", "  quarantine:")
                .edit("texts/en.yaml", "Call {urgent_number} now.", "Call now.")
                .edit(
                        "texts/es.yaml",
                        "Responde antes de las {until}, por favor.\"\n    otherwise",
                        "Responde.\"\n    otherwise");
        assertThat(rules.faults())
                .extracting(RuleFault::what)
                .contains("the key 'isolation' is missing", "the text lacks {urgent_number}", "the text lacks {until}");
    }

    @Test
    void refusesSubjectsThatTellTooMuch() throws Exception {
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"))
                .edit("texts/en.yaml", "We have your message ({ref})", "We have your message, {name}")
                .edit("texts/fr.yaml", "Votre lettre de la clinique ({ref})", "Test négatif ({ref})");
        assertThat(rules.faults())
                .extracting(RuleFault::hint)
                .containsExactly(
                        "a name never stands in a subject",
                        "a result never stands in a subject",
                        "all result letters share one subject, else it tells the result",
                        "all result letters share one subject, else it tells the result");
    }

    @Test
    void saysSoWhereAFileIsNoYaml() throws Exception {
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"));
        Files.writeString(rules.path().resolve("limits.yaml"), "parts: [1, 2\ndepth: 3\n");
        Files.write(rules.path().resolve("pictures.yaml"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        Files.writeString(rules.path().resolve("retention.yaml"), "");
        assertThat(rules.faults())
                .extracting(f -> f.file() + " " + f.what().split(":")[0])
                .containsExactly(
                        "limits.yaml this is not YAML",
                        "pictures.yaml the file is not UTF-8",
                        "retention.yaml the file is empty");
    }

    @Test
    void aMissingFolderIsOneFault() {
        assertThat(Rules.load(folder.resolve("nowhere")))
                .isInstanceOfSatisfying(
                        RulesResult.Faulty.class, f -> assertThat(f.faults()).hasSize(1));
    }

    @Test
    void keepsTheOldRulesOnABadReload() throws Exception {
        RulesFolder rules = RulesFolder.copyTo(folder.resolve("rules"));
        RulesHolder holder = new RulesHolder(Rules.bundled());
        Rules before = holder.current();
        rules.edit("timing.yaml", "grace: PT1M", "grace: long");
        holder.reload(rules.path());
        assertThat(holder.current()).isSameAs(before);
        assertThat(holder.faults()).hasSize(1);
        rules.edit("timing.yaml", "grace: long", "grace: PT2M");
        holder.reload(rules.path());
        assertThat(holder.current().timing().grace()).hasMinutes(2);
        assertThat(holder.current().hash()).isNotEqualTo(before.hash());
        assertThat(holder.faults()).isEmpty();
    }
}
