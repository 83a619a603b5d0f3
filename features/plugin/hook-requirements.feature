# The mandatory requirements that the public list for CDS Hooks 2.0 (220 rows) puts on a service, alone or together with its
# caller: 73 rows, each by its number in that list, in our own words. Where a server is spoken of, a real one is asked over loopback.
@plugin
Feature: What the standard for hooks demands of a service

  @cds-1
  Scenario: 1, everything that goes out is JSON
    Given the answers to the demo calls
    And what discovery tells
    Then all of it reads as JSON

  @cds-2
  Scenario: 2, everything travels over an encrypted connection
    Given a server that others can reach without encryption
    Then it does not start

  @cds-3
  Scenario: 3, nothing that goes out is null or empty, except a list of no cards
    Given the answers to the demo calls
    And what discovery tells
    Then nothing in it is null or empty but a list of cards

  @cds-4
  Scenario: 4, discovery stands at one address below the base address
    Given a server that knows a record system
    When the record system asks for "/cds-services"
    Then the answer has status 200
    When the record system asks for "/cds-services/discovery"
    Then the answer has status 405

  @cds-5
  Scenario: 5, discovery is always there to be fetched
    Given a server that knows a record system
    When the record system asks for "/cds-services"
    Then the answer has status 200
    And it is what discovery tells
    When the record system asks for "/cds-services"
    Then the answer has status 200
    And it is what discovery tells

  @cds-6
  Scenario: 6, discovery answers with an object that holds a list of services
    Given what discovery tells
    Then it is an object with the list "services"
    Then each "services" is an object

  @cds-7
  Scenario: 7, each service names its hook
    Given what discovery tells
    Then each "services" has "hook"
    Then each "services.hook" is a text

  @cds-9
  Scenario: 9, each service is described
    Given what discovery tells
    Then each "services" has "description"
    Then each "services.description" is a text

  @cds-10
  Scenario: 10, each service has the id that stands in its address
    Given what discovery tells
    Then each "services" has "id"
    Then each "services.id" can stand in an address

  @cds-13
  Scenario: 13, discovery that works is answered with success
    Given a server that knows a record system
    When the record system asks for "/cds-services"
    Then the answer has status 200
    And it is JSON

  @cds-16
  Scenario: 16, the address of a service is made of the base address and its id
    Given a server that knows a record system
    When the record system makes the demo call patient-view where discovery says
    Then the answer has status 200
    When the record system makes the demo call patient-view at "/vein-closure"
    Then it is refused

  @cds-29
  Scenario: 29, what should be prefetched is told in discovery
    Given what discovery tells
    Then each "services" has "prefetch"

  @cds-36
  Scenario: 36, each query to prefetch has a key, and the same key is read in a call
    Given what discovery tells
    Then the keys to prefetch are those a call is read by

  @cds-54
  Scenario: 54, data that are needed and missing are answered by naming the key, not by guessing
    Given the demo call patient-view
    And its prefetch "scan" is left out
    Then the answer is that data are missing and names "scan"
    Given a server that knows a record system
    When the record system makes this call
    Then the answer has status 412

  @cds-55
  Scenario: 55, tokens in a query stand in double braces
    Given what discovery tells
    Then each "services.prefetch.*" has braces only in pairs around tokens

  @cds-56
  Scenario: 56, a token names a field of the context or one of the four identifiers of the user
    Given what discovery tells
    Then each "services.prefetch.*" has only tokens the standard knows

  @cds-57
  Scenario: 57, a token names a plain field at the root of the context
    Given what discovery tells
    Then each "services.prefetch.*" has only tokens that are plain fields of the context

  @cds-59
  Scenario: 59, a token that names a field of the context starts with context and a dot
    Given what discovery tells
    Then each "services.prefetch.*" has only tokens that start with "context."

  @cds-61
  Scenario: 61, no call to the record system goes out without its token, for none goes out at all
    Then nothing in the package can open a connection

  @cds-74
  Scenario: 74, a call that works is answered with an object that holds a list of cards
    Given the answers to the demo calls
    Then it is an object with the list "cards"
    Given the demo call order-sign
    And a server that knows a record system
    When the record system makes this call
    Then the answer has status 200

  @cds-75
  Scenario: 75, actions the record system would take by itself are never sent
    Given the answers to the demo calls
    Then none has "systemActions"

  @cds-80
  Scenario: 80, each card has a name of its own
    Given the answers to the demo calls
    Then each "cards" has "uuid"
    Then each "cards.uuid" is a UUID that stands only once

  @cds-83
  Scenario: 83, the summary of a card is a text shorter than 140 characters
    Given the answers to the demo calls
    Then each "cards" has "summary"
    Then each "cards.summary" is shorter than 140 characters

  @cds-85
  Scenario: 85, the detail of a card is Markdown without raw HTML
    Given the answers to the demo calls
    Then each "cards" has "detail"
    Then each "cards.detail" is Markdown without raw HTML

  @cds-87
  Scenario: 87, each card says how urgent it is
    Given the answers to the demo calls
    Then each "cards" has "indicator"
    Then each "cards.indicator" is a text

  @cds-88
  Scenario: 88, urgency has three words
    Given the answers to the demo calls
    Then each "cards.indicator" is one of "info, warning, critical"

  @cds-89
  Scenario: 89, a record system may sort by urgency: opening a chart is never urgent, signing what a rule excludes is
    Given the answer to the demo call patient-view
    Then each "cards.indicator" is one of "info"
    Given the answer to an order-sign for a technique that a rule excludes
    Then each "cards.indicator" is one of "critical"

  @cds-90
  Scenario: 90, each card has a source
    Given the answers to the demo calls
    Then each "cards" has "source"
    Then each "cards.source" is an object

  @cds-92
  Scenario: 92, suggestions are a list of objects
    Given the answers to the demo calls
    Then each list "cards.suggestions" is one
    Then each "cards.suggestions" is an object

  @cds-93
  Scenario: 93, where there are suggestions, it is said how many may be taken
    Given the answers to the demo calls
    Then each card with "suggestions" has "selectionBehavior"

  @cds-95
  Scenario: 95, at most one suggestion may be taken, and none must
    Given the answers to the demo calls
    Then each "cards.selectionBehavior" is one of "at-most-one"

  @cds-96
  Scenario: 96, how many may be taken is a text
    Given the answers to the demo calls
    Then each "cards.selectionBehavior" is a text

  @cds-98
  Scenario: 98, reasons to set a card aside are a list of codes
    Given the answers to the demo calls
    Then each list "cards.overrideReasons" is one
    Then each "cards.overrideReasons" has "code"

  @cds-100
  Scenario: 100, each reason to set a card aside can be read by a person
    Given the answers to the demo calls
    Then each "cards.overrideReasons" has "display"
    Then each "cards.overrideReasons.display" is a text

  @cds-103
  Scenario: 103, links are a list of objects
    Given the answers to the demo calls
    Then each list "cards.links" is one
    Then each "cards.links" is an object

  @cds-105
  Scenario: 105, a source has a label
    Given the answers to the demo calls
    Then each "cards.source" has "label"
    Then each "cards.source.label" is a text

  @cds-107
  Scenario: 107, the address of a source is a whole web address
    Given the answers to the demo calls
    Then each "cards.source.url" is a whole web address

  @cds-111
  Scenario: 111, a source sends no icon, so none with half an address
    Given the answers to the demo calls
    Then none has "cards.source.icon"

  @cds-115
  Scenario: 115, the topic of a source is a code
    Given the answers to the demo calls
    Then each "cards.source.topic" has "code"
    Then each "cards.source.topic" has "system"

  @cds-117
  Scenario: 117, a suggestion has a label
    Given the answers to the demo calls
    Then each "cards.suggestions" has "label"
    Then each "cards.suggestions.label" is a text

  @cds-119
  Scenario: 119, a suggestion has a name of its own
    Given the answers to the demo calls
    Then each "cards.suggestions" has "uuid"
    Then each "cards.suggestions.uuid" is a UUID that stands only once

  @cds-121
  Scenario: 121, no suggestion is marked as the one to take
    Given the answers to the demo calls
    Then none has "cards.suggestions.isRecommended"

  @cds-124
  Scenario: 124, the actions of a suggestion are a list
    Given the answers to the demo calls
    Then each list "cards.suggestions.actions" is one

  @cds-125
  Scenario: 125, the actions of a suggestion belong together, so each suggestion has one
    Given the answers to the demo calls
    Then each list "cards.suggestions.actions" holds one entry

  @cds-127
  Scenario: 127, an action says what kind it is
    Given the answers to the demo calls
    Then each "cards.suggestions.actions" has "type"
    Then each "cards.suggestions.actions.type" is one of "create, update"

  @cds-128
  Scenario: 128, an action is described
    Given the answers to the demo calls
    Then each "cards.suggestions.actions" has "description"
    Then each "cards.suggestions.actions.description" is a text

  @cds-130
  Scenario: 130, an action carries a resource that another reader of the standard accepts
    Given the answers to the demo calls
    Then each "cards.suggestions.actions.resource" is a resource another reader accepts

  @cds-131
  Scenario: 131, what is to be created is new
    Given the answers to the demo calls
    Then each action "create" carries a resource without an id

  @cds-132
  Scenario: 132, what is to be changed is carried whole
    Given the answer to the demo call order-select
    Then each action "update" carries the drafted order, whole but for its code

  @cds-133
  Scenario: 133, nothing is ever to be deleted, so no id stands in the place of a resource
    Given the answers to the demo calls
    Then each "cards.suggestions.actions.type" is one of "create, update"
    Then each "cards.suggestions.actions.resource" is an object

  @cds-134
  Scenario: 134, the id of a thing to delete is never sent, for nothing is
    Given the answers to the demo calls
    Then none has "cards.suggestions.actions.resourceId"

  @cds-135
  Scenario: 135, no id of a thing to delete of another kind than text either
    Given the answers to the demo calls
    Then none has "cards.suggestions.actions.resourceId"

  @cds-136
  Scenario: 136, a person can read why a card may be set aside
    Given the answers to the demo calls
    Then each "cards.overrideReasons.display" is a sentence of words

  @cds-138
  Scenario: 138, a link has a label
    Given the answers to the demo calls
    Then each "cards.links" has "label"
    Then each "cards.links.label" is a text

  @cds-139
  Scenario: 139, a link has an address
    Given the answers to the demo calls
    Then each "cards.links" has "url"
    Then each "cards.links.url" is a whole web address

  @cds-141
  Scenario: 141, a link says of which kind it is
    Given the answers to the demo calls
    Then each "cards.links" has "type"
    Then each "cards.links.type" is a text

  @cds-142
  Scenario: 142, a link is plain or launches an app
    Given the answers to the demo calls
    Then each "cards.links.type" is one of "absolute, smart"

  @cds-144
  Scenario: 144, what an app is told at its launch is a text
    Given the answers to the demo calls
    Then each "cards.links.appContext" is a text

  @cds-147
  Scenario: 147, a plain link tells no app anything
    Given the answers to the demo calls
    Then each link "absolute" has no "appContext"

  @cds-168
  Scenario: 168, nothing travels unencrypted, to whichever address
    Given a server that others can reach without encryption
    Then it does not start
    Given a server that wants no token and that others can reach
    Then it does not start

  @cds-176
  Scenario: 176, a caller shows who it is with a signed token
    Given a server that knows a record system
    When somebody without a token asks for "/cds-services"
    Then the answer has status 401
    And nothing of the reason is told
    When the record system asks for "/cds-services"
    Then the answer has status 200

  @cds-199
  Scenario: 199, keys of a caller that names no address of them are known beforehand
    Given a server that knows a record system by keys written in its settings
    When the record system asks for "/cds-services"
    Then the answer has status 200
    When somebody with another key of the same name asks for "/cds-services"
    Then the answer has status 401

  @cds-201
  Scenario: 201, a token without a signature is refused
    Given a server that knows a record system
    When somebody with a token without a signature asks for "/cds-services"
    Then the answer has status 401
    And nothing of the reason is told

  @cds-203
  Scenario: 203, a token signed with a shared secret is refused
    Given a server that knows a record system
    When somebody with a token signed with the public key as a shared secret asks for "/cds-services"
    Then the answer has status 401
    And nothing of the reason is told

  @cds-208
  Scenario: 208, a program in a browser may call from the addresses allowed
    Given a server that knows a record system
    When a page of "https://records.larkspur.example" asks whether it may call
    Then it may
    When a page of "https://elsewhere.example" asks whether it may call
    Then it may not

  @cds-211
  Scenario: 211, one id for all hooks lets a later card replace an earlier one
    Given what discovery tells
    Then all services have one "id" and different "hook"

  @cds-213
  Scenario: 213, those who connect a record system are told to agree on the hooks that keep patients safe
    Given what discovery tells
    Then each "services.usageRequirements" speaks of "order-sign"

  @cds-214
  Scenario: 214, what is added to the standard is an object under a name of our own
    Given the answers to the demo calls
    Then each "cards.extension" is an object
    Then each "cards.extension" has only names like "org.tunica.trace"

  @cds-216
  Scenario: 216, each code is a text
    Given the answers to the demo calls
    Then each "cards.overrideReasons.code" is a text
    Then each "cards.source.topic.code" is a text

  @cds-217
  Scenario: 217, each code names its system
    Given the answers to the demo calls
    Then each "cards.overrideReasons" has "system"
    Then each "cards.overrideReasons.system" is a text

  @cds-218
  Scenario: 218, no code is left out
    Given the answers to the demo calls
    Then each "cards.overrideReasons" has "code"
    Then each "cards.source.topic" has "code"

  @cds-219
  Scenario: 219, the words beside a reason to set a card aside are a text
    Given the answers to the demo calls
    Then each "cards.overrideReasons" has "display"
    Then each "cards.overrideReasons.display" is a text

  @cds-220
  Scenario: 220, the words beside a topic are a text where they stand
    Given the answers to the demo calls
    Then each "cards.source.topic.display" is a text
