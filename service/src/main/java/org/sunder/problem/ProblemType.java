package org.sunder.problem;

import java.util.Arrays;
import java.util.Optional;
import org.springframework.http.HttpStatus;

/** Every kind of problem the service answers with; the slug is stable and part of the API. */
public enum ProblemType {
    INVALID_INPUT(
            "invalid-input",
            HttpStatus.BAD_REQUEST,
            "The input is not valid",
            "One or more fields or parameters are missing, unknown, of the wrong type, or out of range. Each entry of"
                    + " errors points at one of them and says what is allowed. Nothing was stored."),
    MALFORMED_JSON(
            "malformed-json",
            HttpStatus.BAD_REQUEST,
            "The body is not JSON",
            "The request body could not be read as one JSON document. The detail says where reading stopped."),
    KEY_NEEDED(
            "key-needed",
            HttpStatus.UNAUTHORIZED,
            "An access key is needed",
            "Send an access key as Authorization: Bearer, or sign in with it at /sign-in."),
    KEY_REFUSED(
            "key-refused",
            HttpStatus.UNAUTHORIZED,
            "The access key is not valid",
            "The key is unknown, was revoked, or has ended. Ask whoever gave it to you for a new one."),
    NOT_ALLOWED(
            "not-allowed",
            HttpStatus.FORBIDDEN,
            "The key does not allow this",
            "A read-only key reads, a log-only key reads and logs tests and flights, a full key does everything of one"
                    + " flyer, an admin key looks after flyers and keys besides."),
    FROM_ANOTHER_SITE(
            "from-another-site",
            HttpStatus.FORBIDDEN,
            "The request comes from another site",
            "A page of another origin asked a browser to change something here; that is refused."),
    UNKNOWN_HOST(
            "unknown-host",
            HttpStatus.MISDIRECTED_REQUEST,
            "The service is not known by that name",
            "The Host header names neither an address nor localhost nor a name listed in sunder.access.hosts."),
    TOO_MANY_REQUESTS(
            "too-many-requests",
            HttpStatus.TOO_MANY_REQUESTS,
            "Too many requests",
            "This key or address asks more often than is allowed. Try again after the seconds in Retry-After."),
    NOT_FOUND(
            "not-found",
            HttpStatus.NOT_FOUND,
            "There is no such thing here",
            "The path does not exist, or it names an airframe, joint, ground test or other thing that is not yours or never was."),
    METHOD_NOT_ALLOWED(
            "method-not-allowed",
            HttpStatus.METHOD_NOT_ALLOWED,
            "The method is not allowed here",
            "The path exists but does not take this method; the Allow header lists those it takes."),
    NOT_ACCEPTABLE(
            "not-acceptable",
            HttpStatus.NOT_ACCEPTABLE,
            "None of the accepted media types can be served",
            "The Accept header names no media type that this path can answer with."),
    UNSUPPORTED_MEDIA_TYPE(
            "unsupported-media-type",
            HttpStatus.UNSUPPORTED_MEDIA_TYPE,
            "The media type of the body is not supported",
            "Bodies are application/json; a photo is image/jpeg or image/png, by its bytes too."),
    BODY_TOO_LARGE(
            "body-too-large",
            HttpStatus.CONTENT_TOO_LARGE,
            "The body is too large",
            "A request body may be 256 kB at most, a photo 5 MB, an import 20 MB."),
    UNSOUND_SETUP(
            "unsound-setup",
            HttpStatus.UNPROCESSABLE_CONTENT,
            "The setup cannot exist as described",
            "Each field is well formed, but together they do not describe a compartment: something does not fit, or a"
                    + " value lies outside what the physics here is valid for. errors names each item."),
    UNSOUND_CHARGE(
            "unsound-charge",
            HttpStatus.UNPROCESSABLE_CONTENT,
            "The charge cannot be",
            "A charge is more than nothing and at most 50 g, beyond which the model here is not valid. The cautions stand in"
                    + " the answer."),
    UNSOUND_PHOTO(
            "unsound-photo",
            HttpStatus.UNPROCESSABLE_CONTENT,
            "The photo cannot be taken",
            "It begins like a JPEG or PNG and is broken, incomplete, or states more than 50 million pixels. The detail says"
                    + " which. Nothing was stored."),
    TEST_IN_THE_FUTURE(
            "test-in-the-future",
            HttpStatus.UNPROCESSABLE_CONTENT,
            "The test lies in the future",
            "The time of firing, firedAt, is later than now (two minutes are allowed for clocks that disagree)."),
    NO_FLIGHT_CHARGE(
            "no-flight-charge",
            HttpStatus.CONFLICT,
            "No charge can be given for flight yet",
            "Before a counted test has separated the joint there are only estimates, and where the target cannot be met"
                    + " below the ceiling the setup must change. The detail says which it is and what would help."),
    CONFLICT(
            "conflict",
            HttpStatus.CONFLICT,
            "The state of the resource does not allow this",
            "For instance a void of a test that is void already, or a change to an archived airframe."),
    REQUEST_IN_FLIGHT(
            "request-in-flight",
            HttpStatus.CONFLICT,
            "A request with this idempotency key is still being handled",
            "Wait for its answer, or repeat the same request later with the same key."),
    IDEMPOTENCY_KEY_REUSED(
            "idempotency-key-reused",
            HttpStatus.UNPROCESSABLE_CONTENT,
            "The idempotency key was used with another body",
            "A key stands for one request. Send a changed request with a new key."),
    SHOWN_ONCE(
            "shown-once",
            HttpStatus.CONFLICT,
            "The access key was made already and shown once",
            "The first request with this idempotency key made the access key that the detail names, and its answer showed"
                    + " the key; only a hash of it is kept. If that answer never arrived, revoke the key and make another with"
                    + " a new idempotency key."),
    VERSION_MISMATCH(
            "version-mismatch",
            HttpStatus.PRECONDITION_FAILED,
            "Somebody changed it meanwhile",
            "If-Match does not name the current version. Read the resource again and repeat the change on that."),
    VERSION_REQUIRED(
            "version-required",
            HttpStatus.PRECONDITION_REQUIRED,
            "The change must say which version it is based on",
            "Send If-Match with the ETag of the version you read."),
    STORAGE_UNAVAILABLE(
            "storage-unavailable",
            HttpStatus.SERVICE_UNAVAILABLE,
            "The database does not answer or has no room",
            "The detail says whether anything was stored. Try again after the time in Retry-After, with the same idempotency"
                    + " key: what was stored is not stored twice."),
    BROKEN_OFF(
            "broken-off",
            HttpStatus.REQUEST_TIMEOUT,
            "The body stopped coming",
            "The request did not arrive to its end in time, so nothing was stored. Send it again."),
    STOPPING(
            "stopping",
            HttpStatus.SERVICE_UNAVAILABLE,
            "The service is being stopped",
            "Nothing of the request was read, so nothing was stored. Try again after the time in Retry-After."),
    INTERNAL(
            "internal",
            HttpStatus.INTERNAL_SERVER_ERROR,
            "Something went wrong in the service",
            "This is a defect. The request id in the answer finds it in the log.");

    private final String slug;
    private final HttpStatus status;
    private final String title;
    private final String explanation;

    ProblemType(String slug, HttpStatus status, String title, String explanation) {
        this.slug = slug;
        this.status = status;
        this.title = title;
        this.explanation = explanation;
    }

    /** The stable name, the last part of the type URI. */
    public String slug() {
        return slug;
    }

    /** The HTTP status that goes with it. */
    public HttpStatus status() {
        return status;
    }

    /** A title that a person understands. */
    public String title() {
        return title;
    }

    /** What it means and what to do. */
    public String explanation() {
        return explanation;
    }

    /** Whether its detail may name a charge: then the cautions stand beside it, as beside every charge. */
    boolean namesCharge() {
        return switch (this) {
            case UNSOUND_CHARGE, NO_FLIGHT_CHARGE -> true;
            default -> false;
        };
    }

    /** The relative URI of the page about it. */
    public String uri() {
        return "/problems/" + slug;
    }

    /** The type with that slug. */
    public static Optional<ProblemType> find(String slug) {
        return Arrays.stream(values()).filter(t -> t.slug.equals(slug)).findFirst();
    }
}
