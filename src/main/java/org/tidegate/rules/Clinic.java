package org.tidegate.rules;

import java.util.List;

@Doc("A clinic as it is named in subject lines and the appointment book.")
public record Clinic(
        @Doc("Code in the book and in commands.") String code,
        @Doc("Full name, as printed in letters.") String name,

        @Doc("Other ways participants write it, without case or accents.")
        List<String> aliases,

        @Doc("Phone number printed in every letter.") String phone) {}
