package org.tidegate.rules;

@Doc("Bounds on what looking into one message may cost; they count work, never time.")
public record LimitRules(
        @Doc("Raw bytes looked at.") @Range(min = 1) long messageBytes,
        @Doc("Bytes of one header section.") @Range(min = 1) int headerBytes,

        @Doc("Header fields of one section.") @Range(min = 1)
        int headerFields,

        @Doc("MIME parts and archive entries in all.") @Range(min = 1)
        int parts,

        @Doc("Nesting of containers.") @Range(min = 1) int depth,

        @Doc("Decoded bytes of one attachment.") @Range(min = 1)
        long attachmentBytes,

        @Doc("Decoded bytes of all attachments together.") @Range(min = 1)
        long totalBytes,

        @Doc("Characters of body text kept.") @Range(min = 1)
        int textChars,

        @Doc("Pages of a PDF looked at.") @Range(min = 1) int pdfPages,

        @Doc("Embedded images of a PDF looked at.") @Range(min = 1)
        int pdfImages) {}
