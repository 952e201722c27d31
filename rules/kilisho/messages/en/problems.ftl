# Kinds of problem that the service reports: their title, what they mean, what to do.
problem-malformed-json-title = The body is not JSON
problem-malformed-json-about = The body could not be read as one JSON document in UTF-8, names a member twice, or nests too deeply. NaN is not JSON.
problem-malformed-json-remedy = Send one JSON object. The detail says at which line and column reading stopped.
problem-bad-request-title = The request cannot be read
problem-bad-request-about = A part of the request other than its body breaks the rules of HTTP.
problem-bad-request-remedy = Check the address and the headers.
problem-not-found-title = There is nothing at this address
problem-not-found-about = No operation and no entry of the rulebook has this address.
problem-not-found-remedy = GET / lists the addresses; an entry's id is listed by its collection, and near misses are listed under errors.
problem-method-not-allowed-title = This address does not take this method
problem-method-not-allowed-about = The address exists but answers other methods.
problem-method-not-allowed-remedy = Use a method that the Allow header lists.
problem-not-acceptable-title = No representation fits the Accept header
problem-not-acceptable-about = The address does not offer any of the media types that the Accept header admits.
problem-not-acceptable-remedy = Leave the Accept header out, or admit the media type that the detail names.
problem-too-large-title = The body is too large
problem-too-large-about = The body has more bytes than the service takes.
problem-too-large-remedy = Ask about one farm at a time and leave out what is not needed.
problem-unsupported-media-type-title = The body is not of a type that is taken here
problem-unsupported-media-type-about = The Content-Type header is missing or names another type, another character set than UTF-8, or the body is compressed.
problem-unsupported-media-type-remedy = Send Content-Type: application/json, or for a table the type that the detail names, and the body as it is.
problem-invalid-request-title = The request cannot be answered as it stands
problem-invalid-request-about = The body is JSON, but members are missing, unknown or outside their meaning; or a query parameter is. All faults are listed.
problem-invalid-request-remedy = Go through errors: each points at its place (a JSON Pointer, or the name of the query parameter), and says what was expected.
problem-internal-error-title = The service failed
problem-internal-error-about = The fault is ours and has been logged under the request's id.
problem-internal-error-remedy = Report the instance of the answer to whoever runs the service.
problem-not-ready-title = The service is not ready
problem-not-ready-about = The service cannot recompute its own examples and should not be asked.
problem-not-ready-remedy = Try again later; whoever runs the service finds the reason in its log.
problem-overloaded-title = Too many requests wait
problem-overloaded-about = As many requests as the service takes wait already. Questions that compute for long wait in a line of their own.
problem-overloaded-remedy = Send the request again after as many seconds as the Retry-After header says.

## What is wrong this time
detail-no_address = No operation and no page has this address.
detail-use_allowed_method = Use a method that the Allow header lists.
detail-body_too_large = The body is larger than the service takes.
detail-failed = The service failed; the fault is ours and has been logged.
detail-no_problem_kind = No kind of problem has this name.
# $names are ids of operations.
detail-examples_fail = The service cannot recompute its examples of { $names }.
detail-lane_full = As many requests as the service takes wait already.
detail-caller_left = The caller left while its request waited.
detail-no_entry = The collection holds no entry with this id.
detail-no_entry_of_collection = no entry of this collection
# $types are media types.
detail-accept_must_admit = The Accept header must admit one of: { $types }.
detail-query_does_not_fit = The query does not fit this address.
detail-content_type_json = Content-Type must be application/json.
detail-not_compressed = The body must not be compressed.
detail-no_parameter = no such query parameter here
detail-given_twice = given more than once
detail-most_parameters = at most { $most } query parameters
detail-yes_or_no = true or false
detail-faults = { $count ->
    [one] { $count } fault in the body.
   *[other] { $count } faults in the body.
}
# $faults is the sentence before.
detail-faults_first = { $faults } The first { $most } are listed.
## The body is no JSON; at a place where it is known
detail-body_repeats_member = The body names a member twice.
detail-body_too_deep = The body nests too deeply.
detail-body_not_json = The body is not one JSON document.
detail-body_repeats_member_at = The body names a member twice (line { $line }, column { $column }).
detail-body_too_deep_at = The body nests too deeply (line { $line }, column { $column }).
detail-body_not_json_at = The body is not one JSON document (line { $line }, column { $column }).

## The page of a kind of problem
problem-page-status = Status { $status }
problem-page-what_to_do = What to do
