"use strict";

// The contract comes from the same service as this page; validatorUrl is off because it would call a server elsewhere.
window.ui = SwaggerUIBundle({
  url: "/openapi.json",
  dom_id: "#manual",
  layout: "BaseLayout",
  presets: [SwaggerUIBundle.presets.apis],
  validatorUrl: null,
  deepLinking: true,
  displayOperationId: true,
  displayRequestDuration: true,
  defaultModelsExpandDepth: 0,
  defaultModelExpandDepth: 2,
  tryItOutEnabled: true,
});
