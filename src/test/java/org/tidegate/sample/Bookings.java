package org.tidegate.sample;

import java.util.List;
import java.util.Locale;

/** The appointment book of the sample morning. */
final class Bookings {

    private Bookings() {}

    static final Booking MAREN = quay("SS-2K7Q", "Maren", "Tollisker", "06:30").timer("06:34:00");
    static final Booking CALLAN = quay("SS-3M1D", "Callan", "Roosvik", "06:30");
    static final Booking IVONNE =
            pier("SS-4T8B", "Ivonne", "Castresana", "06:45").language("es").timer("06:48:30");
    static final Booking DORSA =
            pier("SS-5F2H", "Dorota", "Wrzosek", "06:45").language("pl").timer("06:50:10");
    static final Booking HAMISH =
            heli("SS-6P9L", "Hamish", "Garvellan", "07:00").timer("07:03:20");
    static final Booking TERESE =
            heli("SS-7C4W", "Thérèse", "Kervadec", "07:00").language("fr").timer("07:05:00");
    static final Booking OSKAR = quay("SS-8J6N", "Oskar", "Lindevall", "07:15").timer("07:18:40");
    static final Booking PRIYA = quay("SS-9V3X", "Priya", "Sandhurkar", "07:15");
    static final Booking ERLEND = pier("SS-A5Z1", "Erlend", "Skjoldmo", "07:30").timer("07:33:00");
    static final Booking BRONWEN =
            pier("SS-B7R2", "Bronwen", "Talgarth", "07:30").timer("07:36:00");
    static final Booking LUKASZ =
            heli("SS-C9E4", "Łukasz", "Grabiński", "07:45").language("pl").timer("07:49:00");
    static final Booking FIONA = heli("SS-D2U6", "Fiona", "Machrihan", "07:45").timer("07:47:30");
    static final Booking GREGOR = quay("SS-E4K8", "Gregor", "Ardlussa", "08:00").timer("08:04:00");
    static final Booking NADIA = quay("SS-F6S1", "Nadia", "Belhaouari", "08:00").timer("08:02:00");
    static final Booking SVEN = pier("SS-G8Y3", "Sven", "Hallqvist", "08:15").timer("08:19:00");
    static final Booking ALICE = pier("SS-H1G5", "Alice", "Penrothen", "08:15").timer("08:17:00");
    static final Booking RORY = heli("SS-J3B7", "Rory", "Kinlochan", "08:30").timer("08:33:00");
    static final Booking MEI = heli("SS-K5M9", "Mei-Lin", "Tsangley", "08:30").timer("08:35:00");
    static final Booking DAVID_ELDER =
            quay("SS-L7H2", "David", "Strathmoor", "08:45").born("1961-02-09").timer("08:48:00");
    static final Booking DAVID_YOUNGER = new Booking(
                    "SS-M9X4",
                    "David",
                    "Strathmoor",
                    "1991-07-30",
                    DAVID_ELDER.email(),
                    "QUAY",
                    "08:45",
                    "SKERRY-20",
                    "SK2605A",
                    "",
                    "",
                    "",
                    "en",
                    "2026-12-31",
                    "")
            .timer("08:50:00");
    static final Booking JOHANNA =
            pier("SS-N2D6", "Johanna", "Eskelund", "09:00").timer("09:04:00");
    static final Booking PETROS =
            pier("SS-P4W8", "Petros", "Kalamidis", "09:00").timer("09:02:30");
    static final Booking WILMA = heli("SS-Q6J1", "Wilma", "Dunrossan", "09:15").timer("09:18:00");
    static final Booking TARIQ = heli("SS-R8L3", "Tariq", "Mahfoudi", "09:15").timer("09:20:00");
    static final Booking MARGARET =
            quay("SS-S1N5", "Margaret", "Corrieburn", "09:30").timer("09:33:00");
    static final Booking JONAS = quay("SS-T3V7", "Jonas", "Vestergren", "09:30").timer("09:35:00");
    static final Booking CARYS = pier("SS-U5C9", "Carys", "Llanfallen", "09:45").timer("09:48:00");
    static final Booking BRENDAN =
            pier("SS-V7F2", "Brendan", "Oughterly", "09:45").timer("09:50:00");
    static final Booking INGRID =
            heli("SS-W9T4", "Ingrid", "Solbakkmo", "10:00").timer("10:03:00");
    static final Booking MOHAN = heli("SS-X2P6", "Mohan", "Veerapally", "10:00").timer("10:05:00");
    static final Booking SOLENE =
            quay("SS-Y4A8", "Solène", "Morvarec", "10:15").language("fr").timer("10:18:00");
    static final Booking EWAN = quay("SS-Z6R1", "Ewan", "Balgarvie", "10:15").timer("10:20:00");
    static final Booking KIRSTEN =
            pier("SS-27QK", "Kirsten", "Holmgaarden", "10:30").timer("10:33:00");
    static final Booking PAULA =
            pier("SS-38WM", "Paula", "Quintanella", "10:30").kit("FULMAR-15").timer("10:35:00");
    static final Booking ANGUS = heli("SS-49ET", "Angus", "Dalwhinney", "10:45")
            .lot("SK2411C", "2026-03-31")
            .timer("10:48:00");
    static final Booking HILDE = heli("SS-52RP", "Hilde", "Brattvoll", "10:45")
            .lot("SK2604Q", "2026-12-31")
            .timer("10:50:00");
    static final Booking SEAN = quay("SS-63TY", "Seán", "Ó Ruadhgan", "11:00").notObserved();
    static final Booking LENA = quay("SS-74YU", "Lena", "Harkonsen", "11:00").timer("11:04:00");
    static final Booking VICTOR =
            pier("SS-85UJ", "Victor", "Alderscombe", "11:15").timer("11:18:00");
    static final Booking MAEVE = pier("SS-96JK", "Maeve", "Tullycarn", "11:15").timer("11:20:00");
    static final Booking STEFAN =
            heli("SS-A8KL", "Stefan", "Burgwalder", "11:30").timer("11:33:00");
    static final Booking RUTH = heli("SS-B9LZ", "Ruth", "Ormiscaig", "11:30").timer("11:35:00");
    static final Booking OLGA = quay("SS-C1ZX", "Olga", "Perevoshchik", "11:45").timer("11:48:00");
    static final Booking NEIL = quay("SS-D3XC", "Neil", "Fetterbank", "11:45").timer("11:50:00");
    static final Booking AGNES = pier("SS-E5CV", "Agnes", "Rowanlea", "12:00").timer("12:03:00");

    static final Booking IDA = heli("SS-F7VB", "Ida", "Marklund", "12:15").timer("12:19:00");
    static final Booking TOMAS =
            quay("SS-G9BN", "Tomás", "Albarroza", "12:15").language("es").timer("12:20:00");

    static List<Booking> all() {
        return List.of(
                MAREN,
                CALLAN,
                IVONNE,
                DORSA,
                HAMISH,
                TERESE,
                OSKAR,
                PRIYA,
                ERLEND,
                BRONWEN,
                LUKASZ,
                FIONA,
                GREGOR,
                NADIA,
                SVEN,
                ALICE,
                RORY,
                MEI,
                DAVID_ELDER,
                DAVID_YOUNGER,
                JOHANNA,
                PETROS,
                WILMA,
                TARIQ,
                MARGARET,
                JONAS,
                CARYS,
                BRENDAN,
                INGRID,
                MOHAN,
                SOLENE,
                EWAN,
                KIRSTEN,
                PAULA,
                ANGUS,
                HILDE,
                SEAN,
                LENA,
                VICTOR,
                MAEVE,
                STEFAN,
                RUTH,
                OLGA,
                NEIL,
                AGNES,
                IDA,
                TOMAS);
    }

    private static Booking quay(String ref, String given, String family, String slot) {
        return at("QUAY", ref, given, family, slot);
    }

    private static Booking pier(String ref, String given, String family, String slot) {
        return at("PIER", ref, given, family, slot);
    }

    private static Booking heli(String ref, String given, String family, String slot) {
        return at("HELI", ref, given, family, slot);
    }

    private static Booking at(String clinic, String ref, String given, String family, String slot) {
        String local = java.text.Normalizer.normalize(
                        (given + "." + family).replace('Ł', 'L').replace('ł', 'l'), java.text.Normalizer.Form.NFD)
                .replaceAll("[^A-Za-z.]", "")
                .toLowerCase(Locale.ROOT);
        return Booking.of(ref, given, family, local + "@tarnpost.example", clinic, slot);
    }
}
