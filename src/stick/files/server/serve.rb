# Serves the folder "site" beside this one to this computer alone. Needs Ruby with WEBrick.
require 'json'
require 'webrick'

site = File.realpath(File.join(__dir__, '..', 'site'))
types = JSON.parse(File.read(File.join(__dir__, 'types.json')))
server = WEBrick::HTTPServer.new(
  BindAddress: '127.0.0.1', Port: ARGV[0].to_i, AccessLog: [],
  Logger: WEBrick::Log.new(File::NULL)
)
server.mount_proc '/' do |request, response|
  path = request.path.end_with?('/') ? "#{request.path}index.html" : request.path
  file = File.expand_path(File.join(site, path))
  unless file.start_with?("#{site}/") && File.file?(file)
    response.status = 404
    file = File.join(site, '404.html')
  end
  response['Content-Type'] = types[File.extname(file).delete_prefix('.')] || 'application/octet-stream'
  response['Cache-Control'] = 'no-cache'
  response.body = File.binread(file)
end
%w[INT TERM].each { |signal| trap(signal) { server.shutdown } }
server.start
