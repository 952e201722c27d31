# Kinds of problem of those who may not ask, ask too often, or ask for too much.
problem-unauthorized-title = A key is needed
problem-unauthorized-about = This service answers callers who show one of its API keys. The request showed none, or one that the service does not know.
problem-unauthorized-remedy = Send the key as Authorization: Bearer KEY. Whoever runs the service gives keys out.
problem-too-many-requests-title = Too many requests
problem-too-many-requests-about = The caller has sent more requests than the service answers in this time.
problem-too-many-requests-remedy = Send the request again after as many seconds as the Retry-After header says.
problem-took-too-long-title = The answer took too long
problem-took-too-long-about = Working out the answer took longer than the service allows, so it was given up.
problem-took-too-long-remedy = Ask for less, such as a shorter forecast or fewer substrates. Repeating the same request helps only if the service was busy.

## What is wrong this time
detail-no_key = The request shows no key.
detail-key_not_known = The Authorization header holds no key that the service knows.
detail-asks_too_often = This caller asks more often than the service answers.
detail-took_too_long = The answer was given up because it took too long.
