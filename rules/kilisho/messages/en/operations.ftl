## The service is being stopped
detail-leaving = The service is being stopped and takes no new work; another one answers.
