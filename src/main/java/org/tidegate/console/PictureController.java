package org.tidegate.console;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.tidegate.casework.Casebook;
import org.tidegate.casework.Drawings;
import org.tidegate.work.SubmissionId;

/** Photos as they came, cassettes by themselves, and the drawn clocks. Kept by no cache, neither a proxy's nor the browser's. */
@Controller
class PictureController {

    /** What a browser shows; nothing else is served. */
    static final List<String> SHOWN = List.of("image/jpeg", "image/png", "image/gif", "image/webp");

    private static final int WIDE = 1100;
    private static final int NARROW = 340;

    private final Casebook casebook;
    private final Drawings drawings;

    PictureController(Casebook casebook, Drawings drawings) {
        this.casebook = casebook;
        this.drawings = drawings;
    }

    /** @param path an attachment's path inside the message: a name in its tree, never a file here */
    @GetMapping("/submissions/{id}/messages/{message}/picture")
    ResponseEntity<byte[]> picture(@PathVariable long id, @PathVariable int message, @RequestParam String path) {
        return casebook.picture(new SubmissionId(id), message, path)
                .filter(p -> SHOWN.contains(p.mediaType()))
                .map(p -> answer(MediaType.parseMediaType(p.mediaType()), p.content()))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    /** A cassette by itself. */
    @GetMapping("/submissions/{id}/cassettes/{number}")
    ResponseEntity<byte[]> cassette(@PathVariable long id, @PathVariable long number) {
        return casebook.cassette(new SubmissionId(id), number)
                .map(p -> answer(MediaType.parseMediaType(p.mediaType()), p.content()))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    /** @param narrow for a small screen */
    @GetMapping("/submissions/{id}/timeline.svg")
    ResponseEntity<byte[]> timeline(@PathVariable long id, @RequestParam(defaultValue = "false") boolean narrow) {
        return drawings.of(new SubmissionId(id))
                .map(d -> drawn(d.svg(narrow ? NARROW : WIDE)))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    /** The page for a participant who disputes, as it would go out with a letter now. */
    @GetMapping("/submissions/{id}/times.pdf")
    ResponseEntity<byte[]> enclosure(@PathVariable long id) {
        return drawings.enclosure(new SubmissionId(id))
                .map(page -> answer(MediaType.APPLICATION_PDF, page))
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private static ResponseEntity<byte[]> drawn(String svg) {
        return answer(MediaType.valueOf("image/svg+xml"), svg.getBytes(StandardCharsets.UTF_8));
    }

    private static ResponseEntity<byte[]> answer(MediaType type, byte[] content) {
        return ResponseEntity.ok()
                .contentType(type)
                .cacheControl(CacheControl.noStore())
                .body(content);
    }
}
